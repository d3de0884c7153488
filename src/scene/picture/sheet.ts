import { type IUniform, ShaderMaterial, type WebGLRenderer, type WebGLRenderTarget } from 'three';
import { FullScreenQuad } from 'three/addons/postprocessing/Pass.js';

const VERTEX = /* glsl */ `
  varying vec2 vAt;
  void main() {
    vAt = uv;
    gl_Position = vec4(position.xy, 0.0, 1.0);
  }`;

/** A pass over a whole picture: a fragment shader that gets its place in 0..1 as `vAt`. */
export class Sheet<Uniforms extends Record<string, IUniform>> {
  private readonly quad: FullScreenQuad;
  private readonly material: ShaderMaterial;

  constructor(
    readonly uniforms: Uniforms,
    fragmentShader: string,
    defines: Record<string, string | number> = {},
  ) {
    this.material = new ShaderMaterial({
      uniforms,
      vertexShader: VERTEX,
      fragmentShader,
      defines,
      depthTest: false,
      depthWrite: false,
      toneMapped: false,
    });
    this.quad = new FullScreenQuad(this.material);
  }

  /** Into a target, or, with null, into the viewport that is set on the canvas. */
  draw(renderer: WebGLRenderer, target: WebGLRenderTarget | null): void {
    renderer.setRenderTarget(target);
    this.quad.render(renderer);
  }

  dispose(): void {
    this.material.dispose();
    this.quad.dispose();
  }
}
