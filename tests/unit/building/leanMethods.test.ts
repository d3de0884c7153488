import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'vite';
import { expect, test } from 'vitest';
import { namedIn, withoutUncalled } from '../../../src/building/leanMethods';
import { HOUSE } from '../../../src/workshop/house.mjs';

const lean = (code: string) => withoutUncalled(code, parseAst(code));

test('methods that nothing calls go whole, and what stands beside them stays as it is written', () => {
  const code =
    "class A {\n\tcopy() { return this; }\n\ttoJSON( meta ) { return { slerp: '}' }; }\n\tclone() {}\n}\nexport { A };\n";
  const { code: left, names } = lean(code);
  expect(names).toEqual(['toJSON']);
  expect(left).toBe('class A {\n\tcopy() { return this; }\n\t\n\tclone() {}\n}\nexport { A };\n');
});

test('getters, names that are worked out, and functions of the same name stay', () => {
  const code =
    "class A { get angleTo() { return 1; } ['toJSON']() {} }\nfunction slerp() {}\nexport { A, slerp };\n";
  expect(lean(code)).toEqual({ code, names: [] });
});

test.each(['math/Quaternion', 'math/Vector3', 'core/Object3D', 'core/BufferGeometry', 'materials/Material'])(
  "three's %s is still a module without them, and lean already",
  (name) => {
    const { code, names } = lean(readFileSync(join(HOUSE, 'node_modules/three/src', `${name}.js`), 'utf8'));
    expect(names.length).toBeGreaterThan(0);
    expect(lean(code)).toEqual({ code, names: [] });
  },
);

test('a script that names one is told of, a longer name is not one', () => {
  expect(namedIn('a.b.angleTo(c)')).toBe('angleTo');
  expect(namedIn('const rectangleTo=1;a.angleToo()')).toBeUndefined();
});
