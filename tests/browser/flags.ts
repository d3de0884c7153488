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
];
