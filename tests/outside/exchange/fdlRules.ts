/**
 * What the format asks of the parts that this program writes, as a JSON schema (draft 2020-12): our own statement of
 * the rules of the published specification and schema 2.0.1, which is stricter in that it allows no other parts.
 * Source: [fdl]
 */
const strict = (
  properties: Record<string, object>,
  required: readonly string[] = Object.keys(properties),
) => ({
  type: 'object',
  properties,
  required,
  patternProperties: { '^_': {} },
  additionalProperties: false,
});

const text = { type: 'string' };
const id = { type: 'string', pattern: '^[A-Za-z0-9_]{1,32}$' };
const pairId = { type: 'string', maxLength: 65, pattern: '^[A-Za-z0-9_]+-[A-Za-z0-9_]+$' };
const size = (type: 'integer' | 'number') =>
  strict({ width: { type, exclusiveMinimum: 0 }, height: { type, exclusiveMinimum: 0 } });
const point = strict({ x: { type: 'number', minimum: 0 }, y: { type: 'number', minimum: 0 } });

const intent = strict(
  { label: text, id, aspect_ratio: size('integer'), protection: { type: 'number', minimum: 0 } },
  ['id', 'aspect_ratio'],
);
const decision = strict(
  { label: text, id: pairId, framing_intent_id: id, dimensions: size('number'), anchor_point: point },
  ['id', 'framing_intent_id', 'dimensions', 'anchor_point'],
);
const canvas = {
  ...strict(
    {
      label: text,
      id,
      source_canvas_id: id,
      dimensions: size('integer'),
      effective_dimensions: size('integer'),
      effective_anchor_point: point,
      physical_dimensions: size('number'),
      anamorphic_squeeze: { type: 'number', exclusiveMinimum: 0 },
      framing_decisions: { type: 'array', items: decision },
    },
    ['id', 'source_canvas_id', 'dimensions'],
  ),
  dependentRequired: { effective_dimensions: ['effective_anchor_point'] },
};

export const FDL_RULES = strict(
  {
    uuid: {
      type: 'string',
      pattern: '^[0-9A-Fa-f]{8}-[0-9A-Fa-f]{4}-[0-9A-Fa-f]{4}-[0-9A-Fa-f]{4}-[0-9A-Fa-f]{12}$',
    },
    version: strict({ major: { const: 2 }, minor: { const: 0 } }),
    fdl_creator: text,
    default_framing_intent: id,
    framing_intents: { type: 'array', items: intent },
    contexts: {
      type: 'array',
      items: strict({ label: text, context_creator: text, canvases: { type: 'array', items: canvas } }, []),
    },
  },
  ['uuid', 'version'],
);
