/**
 * What the browser would do beside the page: it holds the lists under its address bar ready as pages of their own, drawn
 * at every step, and a process in reserve for the next page, which would be killed with the others where tabs are. The
 * driver's own list stands here as well, since the last list alone counts.
 */
const LEFT_OUT = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxFullPopup',
  'SpareRendererForSitePerProcess',
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
  `--disable-features=${LEFT_OUT.join(',')}`,
];

/** For pages that draw no picture: put together by the processor too, which takes a quarter off most of them. */
export const WITHOUT_CARD = [...FLAGS, '--disable-gpu'];
