/** What nets let straight through: a single takes half a stop, a double one stop, as two singles do. Source: [grip-nets] */
export const NETS = { single: 0.71, double: 0.5 } as const;
