/** Whether this browser draws at all. Tried once on a canvas of its own, given back at once. */
export function offersWebGl(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
