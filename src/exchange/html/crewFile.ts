import { wallTime } from '../../core/night/times/nightClock';
import { skyEvents } from '../../core/night/words/skyEvents';
import type { Setup } from '../../core/plan/schema/setup';
import { setupLetter } from '../../core/plan/setupLetter';
import { withNames } from '../../core/plan/withNames';
import { noCodeWords } from '../pdf/link/packLink';
import { cautionsPart } from '../pdf/parts/cautions';
import { lightPart } from '../pdf/parts/light';
import { nightPart } from '../pdf/parts/night';
import { notesPart } from '../pdf/parts/notes';
import { packingPart } from '../pdf/parts/packing';
import { powerPart } from '../pdf/parts/power';
import { findings, readings, setupFacts } from '../pdf/parts/setup';
import type { PartInput } from '../pdf/types';
import { codeSvg } from './codeSvg';
import { HtmlWriter } from './htmlWriter';
import { html, Markup, NOTHING } from './markup';
import { CREW_FILE_MARK, planMarkup } from './planInFile';
import { roofSvg } from './roofSvg';
import { standingCards } from './standingCards';
import { STYLE } from './style';

/** What a crew sheet as one file is made of: all of a pack but its paper and pictures. */
export interface CrewFileInput extends PartInput {
  /** Pictures of setups by their ids, JPEG files as addresses that hold their data. */
  readonly pictures?: ReadonlyMap<string, string>;
}

/** Nothing is fetched, nothing runs: what is in the file is all that there is. */
const POLICY =
  "default-src 'none'; img-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";
const JPEG = /^data:image\/jpeg;base64,[A-Za-z0-9+/]+=*$/;

interface Section {
  readonly id: string;
  readonly name: string;
  readonly body: Markup;
}

/** Setups as the night has them, then those that it leaves out. */
function inShootingOrder({ plan, night }: CrewFileInput): readonly Setup[] {
  const placed = night.schedule.setups.map(({ job }) => plan.setups[job]);
  return [...placed, ...plan.setups.filter((setup) => !placed.includes(setup))];
}

function setupCard(input: CrewFileInput, setup: Setup): Markup {
  const { plan, night, report, pictures, lengths } = input;
  const place = plan.setups.indexOf(setup);
  const shot = night.schedule.setups.find(({ job }) => job === place);
  const judged = report.setups.find(({ id }) => id === setup.id);
  const data = pictures?.get(setup.id);
  const picture =
    data !== undefined && JPEG.test(data)
      ? html`<img alt="What setup ${setupLetter(place)} sees as its span begins" src="${data}">`
      : html`<p class="none">No picture of this setup is in the file.</p>`;
  const facts = new HtmlWriter(4);
  setupFacts(facts, input, setup);
  const more = new HtmlWriter(4);
  readings(more, input, setup);
  const said = new HtmlWriter(4);
  if (judged) findings(said, judged, lengths);
  const clock = shot
    ? html`<span class="clock">${wallTime(night.clock, shot.shotFrom)} to ${wallTime(night.clock, shot.until)}</span>`
    : NOTHING;
  return html`<article class="setup" id="setup-${place + 1}"><h3 class="name"><span class="letter">${setupLetter(place)}</span> <bdi>${setup.label}</bdi>${clock}</h3>${picture}${facts.written}${said.written}<details><summary>Where it stands and how far it is</summary>${more.written}</details></article>`;
}

/** Parts of the pack as sections of the file. */
function written(write: (writer: HtmlWriter) => void): Markup {
  const writer = new HtmlWriter();
  write(writer);
  return writer.written;
}

function linkSection({ link, noLink, plan, fingerprint }: CrewFileInput): Markup {
  const known = html`<p><b>${plan.title}</b>, plan ${fingerprint}.</p><p>This file holds the plan itself: the editor opens it like any plan.</p>`;
  if (!link) return noLink === undefined ? known : html`${known}<p>${noLink}</p>`;
  const { address, code, leftOut } = link;
  const about = code ? html`<p>Phones read the code off this page.</p>` : html`<p>${noCodeWords(link)}</p>`;
  const opens = /^https?:/.test(address)
    ? html`<p><a href="${address}" rel="noreferrer">Open the crew sheet by its link</a></p><p class="address">${address}</p>`
    : NOTHING;
  return html`<div class="link">${code ? codeSvg(code) : NOTHING}<div>${known}${about}${opens}${leftOut.map((sentence) => html`<p>${sentence}</p>`)}</div></div>`;
}

function sectionsOf(input: CrewFileInput): readonly Section[] {
  const { plan, standing, report } = input;
  const part = (name: string) => (write: (writer: HtmlWriter, input: PartInput, part: string) => unknown) =>
    written((writer) => write(writer, input, name));
  const sections: readonly (Section | null)[] = [
    {
      id: 'setups',
      name: 'Setups',
      body:
        plan.setups.length === 0
          ? html`<p>This plan has no setups.</p>`
          : html`<div class="setups">${inShootingOrder(input).map((setup) => setupCard(input, setup))}</div>`,
    },
    { id: 'overhead', name: 'Overhead', body: roofSvg(plan) },
    standing.length === 0
      ? null
      : { id: 'standing', name: 'Where things stand', body: standingCards(standing) },
    { id: 'light', name: 'Light', body: part('Light')(lightPart) },
    { id: 'power', name: 'Power', body: part('Power')(powerPart) },
    { id: 'times', name: 'Times', body: part('Times')(nightPart) },
    { id: 'packing', name: 'Packing', body: part('Packing')(packingPart) },
    { id: 'cautions', name: 'Cautions', body: part('Cautions')(cautionsPart) },
    report.notices.length === 0
      ? null
      : { id: 'notes', name: 'Notes on the plan', body: part('Notes on the plan')(notesPart) },
    { id: 'link', name: 'Link', body: linkSection(input) },
  ];
  return sections.filter((section) => section !== null);
}

function timesOf({ night, plan }: CrewFileInput): Markup {
  if (plan.setups.length === 0) return NOTHING;
  const { clock, call, schedule, sky } = night;
  const sunset = skyEvents(sky).filter(({ name }) => /sunset|dark/i.test(name));
  const all = [
    { name: 'call', minutes: call },
    ...(schedule.meal ? [{ name: 'meal', minutes: schedule.meal.from }] : []),
    ...sunset,
    { name: 'wrap', minutes: schedule.wrap },
  ].toSorted((a, b) => a.minutes - b.minutes);
  return html`<dl class="times">${all.map(({ name, minutes }) => html`<div><dt>${name.toLowerCase()}</dt><dd>${wallTime(clock, minutes)}</dd></div>`)}</dl>`;
}

/**
 * The crew sheet as one file that opens by itself: no script, nothing from elsewhere, both themes, with the plan in it.
 * The same input gives the same text.
 */
export function crewFileOf(input: CrewFileInput): string {
  const { plan, fingerprint } = input;
  const sections = sectionsOf({ ...input, plan: withNames(plan) });
  const notes = plan.notes.trim() === '' ? NOTHING : html`<p class="notes">${plan.notes}</p>`;
  const page = html`<html lang="en-GB"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${POLICY}"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="referrer" content="no-referrer"><title>${plan.title}</title><style>${new Markup(STYLE)}</style></head><body><header><h1><bdi>${plan.title}</bdi></h1><p>${plan.place.label}, <span class="whole">${plan.place.date}</span></p>${notes}${timesOf(input)}</header><nav aria-label="Parts"><ul>${sections.map(({ id, name }) => html`<li><a href="#${id}">${name}</a></li>`)}</ul></nav><main>${sections.map(({ id, name, body }) => html`<section id="${id}" aria-labelledby="${id}-name"><h2 id="${id}-name">${name}</h2>${body}</section>`)}</main><footer><p>Plan ${fingerprint}. A frozen copy: what changes afterwards needs a new file.</p></footer>${planMarkup(plan)}</body></html>`;
  return `${CREW_FILE_MARK}${page.html}\n`;
}
