import { STANDING_WORDS, type Standing } from '../pdf/standing';
import { html, type Markup, NOTHING } from './markup';

const line = (name: string, text: string): Markup =>
  text === '' ? NOTHING : html`<dt>${name}</dt><dd>${text}</dd>`;

/** Everything that is set by tapes, a card that opens for each. */
export const standingCards = (standing: readonly Standing[]): Markup =>
  html`<p class="quiet">${STANDING_WORDS}</p><div class="standing">${standing.map(card)}</div>`;

const card = ({ label, height, aim, carries, places }: Standing): Markup =>
  html`<details><summary><bdi>${label}</bdi><span class="aside">${height}</span></summary><dl>${line('carries', carries.join(', '))}${line('height', height)}${line('looks to', aim)}${places.map(
    ({ to, tapes: [one, other], side, level }) =>
      html`<dt>${to}</dt><dd>${one}; ${other}${side === '' ? '' : `, ${side}`}; on the floor at ${level}</dd>`,
  )}</dl></details>`;
