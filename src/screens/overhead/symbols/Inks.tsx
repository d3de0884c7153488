import { memo } from 'react';

/** The hatchings. They keep their spacing on the sheet whatever the scale, and turn with nothing. */
export const Inks = memo(function Inks({ perMetre }: { readonly perMetre: number }) {
  const onSheet = `scale(${1 / perMetre})`;
  return (
    <defs>
      <pattern
        id="ink-hatch"
        width={5}
        height={5}
        patternUnits="userSpaceOnUse"
        patternTransform={`${onSheet} rotate(45)`}
      >
        <path className="ink" d="M0 0V5" />
      </pattern>
      <pattern
        id="ink-brick"
        width={7}
        height={7}
        patternUnits="userSpaceOnUse"
        patternTransform={`${onSheet} rotate(45)`}
      >
        <path className="ink" d="M0 0V7M2 0V7" />
      </pattern>
      <pattern
        id="ink-brick-soft"
        width={7}
        height={7}
        patternUnits="userSpaceOnUse"
        patternTransform={`${onSheet} rotate(45)`}
      >
        <path className="ink soft" d="M0 0V7M2.5 0V7" />
      </pattern>
      <pattern
        id="ink-boards"
        width={5.5}
        height={5.5}
        patternUnits="userSpaceOnUse"
        patternTransform={onSheet}
      >
        <path className="ink soft" d="M0 0V5.5" />
      </pattern>
      <pattern
        id="ink-dense"
        width={3}
        height={3}
        patternUnits="userSpaceOnUse"
        patternTransform={`${onSheet} rotate(45)`}
      >
        <path className="ink" d="M0 0V3" />
      </pattern>
    </defs>
  );
});
