/**
 * What the browser's own window would do beside the page: it holds the lists under its address bar ready as pages of
 * their own, drawn at every step. The driver's own list stands here as well, since the last list alone counts.
 */
const LEFT_OUT = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxFullPopup',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsUpgrades',
  'HttpsFirstBalancedModeAutoEnable',
  'LensOverlay',
  'MediaRouter',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'OptimizationHints',
  'NetworkTimeServiceQuerying',
  'AimEnabled',
  'PreconnectToSearch',
];

/** The flag that leaves out what no test needs, and some more of the browser's features. */
export const leavingOut = (...more: readonly string[]): string =>
  `--disable-features=${[...LEFT_OUT, ...more].join(',')}`;

/**
 * With these the browser runs alike everywhere, without a graphics card too. Pages are rastered by the processor: where
 * no card draws, the way over the card's language takes half as long again.
 */
export const FLAGS = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-gpu-rasterization',
  leavingOut(),
];

/** For pages that draw no picture: put together by the processor too, which takes a quarter off most of them. */
export const WITHOUT_CARD = [...FLAGS, '--disable-gpu'];
