/** The part of the bibliography that is about power: see `sources`. */
export const SOURCES_OF_POWER = {
  'conductor-properties': {
    title:
      'Conductor properties (NEC chapter 9, table 8, transcribed): uncoated copper at 75 °C, ohms per 1,000 ft: 14 AWG 3.14, 12 AWG 1.98, 8 AWG 0.778, 4 AWG 0.308, 2 AWG 0.194, of seven strands',
    where: 'sfasoft.com/look/35/Conductor_Properties',
    seen: 'read',
  },
  'conductor-properties-rest': {
    title: 'The same table for 18, 16, 10 and 6 AWG: 7.95, 4.99, 1.24, 0.491 ohms per 1,000 ft',
    where: 'NEC chapter 9, table 8; not looked up',
    seen: 'memory',
  },
  'wire-gauge': {
    title: 'American wire gauge: diameter = 0.005 in × 92^((36 − n) ÷ 39) (ASTM B258)',
    where: 'Debian units 2.22-2, wiregauge()',
    seen: 'package',
  },
  'flexible-conductors': {
    title:
      'IEC 60228 class 5, plain copper at 20 °C, ohms per km: 1 mm² 19.5, 1.5 13.3, 2.5 7.98, 4 4.95, 6 3.30, 10 1.91, 16 1.21, 25 0.780',
    where: 'mycableengineering.com/knowledge-base/iec-60228-dc-resistance',
    seen: 'read',
  },
  'copper-temperature': {
    title: 'Resistance of copper grows by 0.393 % of that at 20 °C with each kelvin',
    where: 'uecables.com/471-power-copper-conductors-according-to-iec-60228.html (factor 0.820 at 75 °C)',
    seen: 'read',
  },
  'cord-ampacity': {
    title:
      'Flexible cords, NEC table 400.5(A)(1), two conductors that carry current: 18 AWG 10 A, 16 AWG 13 A, 14 AWG 18 A, 12 AWG 25 A',
    where: 'bbs.angui.org/thread-1137 (a UL text that quotes it)',
    seen: 'read',
  },
  'cord-ampacity-rest': {
    title:
      'The same table, two conductors: 10 AWG 30 A, 8 AWG 40 A, 6 AWG 55 A, 4 AWG 70 A, 2 AWG 95 A; rubber cords in mm² at 30 °C: 1 mm² 15 A, 1.5 18 A, 2.5 26 A, 4 34 A, 6 44 A, 10 61 A, 16 82 A, 25 108 A',
    where: 'NEC table 400.5(A)(1), VDE 0298 part 4; not looked up',
    seen: 'memory',
  },
  'continuous-load': {
    title:
      'A load of 3 hours or more is continuous, and its breaker is rated for 125 % of it: 16 A on a breaker of 20 A (NEC 100, 210.20(A))',
    where: 'forums.mikeholt.com/threads/46907',
    seen: 'read',
  },
  'drop-limits': {
    title:
      'Voltage drop: 3 % on a branch, 5 % in all, recommended (NEC informational notes to 210.19 and 215.2)',
    where: 'tradelicenseprep.com/nc-sp-ph-prep/calc-voltage-drop',
    seen: 'read',
  },
  'drop-formula': {
    title: 'Voltage drop of a single-phase circuit: 2 × K × I × L ÷ circular mils, K = 12.9 for copper',
    where: 'electricianmath.com/conversions/voltagedrop1.htm',
    seen: 'read',
  },
  'load-flow': {
    title: 'Backward and forward sweep over a tree of conductors with loads of constant power',
    where: 'textbooks of distribution systems; not looked up',
    seen: 'memory',
  },
  'generator-classes': {
    title: 'Small inverter generators and power stations as their sizes commonly are; no single one',
    where: 'plates and leaflets seen over the years; not looked up',
    seen: 'memory',
  },
  'generator-burn': {
    title:
      'Burn of an engine generator against its load is nearly a straight line that does not begin at nothing: unloaded 30 to 60 % of full',
    where: 'autonomoustools.com/blog/2009/12/23',
    seen: 'read',
  },
  'generator-refuel': {
    title: 'Generators: stop and let cool before refuelling; keep dry; no backfeeding through an outlet',
    where: 'redcross.org, safe generator use',
    seen: 'read',
  },
  'ground-fault': {
    title:
      'Ground-fault protection of temporary 120 V outlets of 15 and 20 A (OSHA 1926.404(b)(1)(i)); of 15, 20 and 30 A (NEC 590.6(A))',
    where: 'osha.gov, standard interpretation of 2005-02-07',
    seen: 'read',
  },
} as const;
