import type { IUniform, Material, MeshStandardMaterial } from 'three';
import type { ModelSkin } from '../../core/form/models/heldModel';
import type { PartShape } from '../../core/form/types';
import type { Ground, Plan } from '../../core/plan/schema/plan';
import { colourOfHex } from '../light/kelvin';
import { type DeckView, layAreas, makeDeckView } from './deckView';
import { type GlowUniforms, makeGlow } from './glowMaterial';
import { makeScreen } from './litMaterials';
import { LOOKS } from './looks';
import { makeNoise } from './noise';
import { SkinPictures } from './skinPictures';
import { makeSkyline } from './skylineMaterial';
import { makeSurface, type Wire } from './surfaceMaterial';
import { WET_SHARES, wetMaskOf } from './wetMask';
import { makeWindow } from './windowMaterial';

/** A scanned surface: its own colours, rough as most of what stands on a roof. */
const SKIN_LOOK = { ...LOOKS.paint, roughness: 0.88 };

/** What a part is drawn with beyond its shape. */
export interface PartContext {
  readonly itemId: string;
  readonly ground: Ground;
  readonly isDeck: boolean;
  readonly wire: Wire | null;
  /** Beyond the roof, where no lamp of the set reaches. */
  readonly isBackground: boolean;
}

/** From thread to thread of a net. Source: common practice, no source */
const NET_METRES = 0.003;

/** The wire of a mesh, and the thread that makes a net as open as it is: (1 − thread ÷ pitch)². */
function wireOf({ substance, openness }: PartShape, { wire }: PartContext): Wire | null {
  if (substance === 'net')
    return { cellMetres: NET_METRES, wireMetres: NET_METRES * (1 - Math.sqrt(openness ?? 0)) };
  return substance === 'wire mesh' ? (wire ?? { cellMetres: 0.05, wireMetres: 0.0025 }) : null;
}

/** Every material of the stage, made once for each way of looking and shared by all parts that look so. */
export class MaterialLibrary {
  readonly deckView: DeckView = makeDeckView();
  readonly glowCeiling: IUniform<number> = { value: 1 };
  private readonly noise: IUniform = { value: makeNoise() };
  private readonly made = new Map<string, Material>();
  private readonly glows = new Map<string, GlowUniforms>();
  private readonly pictures = new SkinPictures();
  private readonly skins = new WeakMap<object, MeshStandardMaterial>();

  of(shape: PartShape, context: PartContext): Material {
    const { substance, colour, skin } = shape;
    if (skin) return this.skinned(skin);
    if (substance === 'glow') return this.keep(`glow ${context.itemId}`, () => this.makeGlow(context.itemId));
    if (substance === 'window') return this.keep(`window ${colour}`, () => makeWindow(colour));
    if (substance === 'screen') return this.keep('screen', makeScreen);
    if (context.isBackground) {
      const reflectance = colour ? colourOfHex(colour) : LOOKS[substance].colour;
      return this.keep(`skyline ${reflectance}`, () => makeSkyline(reflectance, this.noise));
    }
    const { wetness } = context.ground;
    const isGround = substance === context.ground.surface;
    const isInAreas = isGround && context.isDeck && context.ground.areas !== undefined;
    const isWetDeck = isInAreas || (isGround && (shape.mirror !== null || wetness === 'damp'));
    const wire = wireOf(shape, context);
    const key = [
      substance,
      colour,
      shape.smooth,
      isWetDeck && wetness,
      wire && `${wire.cellMetres} ${wire.wireMetres}`,
    ].join('|');
    return this.keep(key, () =>
      makeSurface({
        look: LOOKS[substance],
        colour,
        round: shape.smooth,
        noise: this.noise,
        ...(wire && { wire }),
        ...(isWetDeck && {
          wet: { film: WET_SHARES[wetness][0], puddle: WET_SHARES[wetness][1], view: this.deckView },
        }),
      }),
    );
  }

  /** What the item's glowing parts shine with; null while none is drawn. */
  glowOf(itemId: string): GlowUniforms | null {
    return this.glows.get(itemId) ?? null;
  }

  /** Lays a plan's wet areas over its decks. */
  wet(plan: Plan): void {
    layAreas(this.deckView, wetMaskOf(plan));
  }

  dispose(): void {
    layAreas(this.deckView, null);
    for (const material of this.made.values()) material.dispose();
    this.made.clear();
    this.glows.clear();
    this.noise.value.dispose();
    this.pictures.dispose();
  }

  private skinned({ picture, places, isCutOut }: ModelSkin): Material {
    const shown = places ? picture : null;
    const known = shown && this.skins.get(shown);
    if (known) return known;
    const make = () =>
      makeSurface({
        look: SKIN_LOOK,
        colour: null,
        round: true,
        noise: this.noise,
        skin: { hasPicture: shown !== null, isCutOut },
      });
    if (!shown) return this.keep('skin', make);
    const material = make();
    this.skins.set(shown, material);
    this.pictures.putOn(material, shown);
    return material;
  }

  private makeGlow(itemId: string): Material {
    const { material, uniforms } = makeGlow(this.glowCeiling);
    this.glows.set(itemId, uniforms);
    return material;
  }

  private keep(key: string, make: () => Material): Material {
    const found = this.made.get(key);
    if (found) return found;
    const material = make();
    this.made.set(key, material);
    return material;
  }
}
