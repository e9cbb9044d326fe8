// Where frames are drawn: coarse ones straight on the canvas, fine ones with smooth edges, which takes three
// times as long where no graphics card does it.
import { SRGBColorSpace, type WebGLRenderer, WebGLRenderTarget } from "three";

/** Of each pixel so many points are looked at. */
const SAMPLES = 4;

/** What three draws on as it draws on a canvas: in the colours of the screen. */
class Sheet extends WebGLRenderTarget {
  readonly isXRRenderTarget = true;

  constructor() {
    super(1, 1);
    this.texture.colorSpace = SRGBColorSpace;
  }
}

/** Its types don't say so, but three can be given what to draw on. */
interface Given {
  setRenderTargetFramebuffer(target: WebGLRenderTarget, given: WebGLFramebuffer): void;
}

export class Frame {
  private readonly sheet = new Sheet();
  private buffer: WebGLFramebuffer | null = null;
  private colours: WebGLRenderbuffer | null = null;
  private depths: WebGLRenderbuffer | null = null;

  /** The renderer's canvas must have no smooth edges of its own. */
  constructor(private readonly renderer: WebGLRenderer & Partial<Given>) {
    // What was made before is gone with its context.
    renderer.domElement.addEventListener("webglcontextrestored", () => (this.buffer = null));
  }

  /** Have a frame drawn. */
  draw(fine: boolean, draw: () => void): void {
    if (!fine) return draw();
    const gl = this.renderer.getContext() as WebGL2RenderingContext;
    const [width, height] = [gl.drawingBufferWidth, gl.drawingBufferHeight];
    this.size(gl, width, height);
    this.renderer.setRenderTarget(this.sheet);
    draw();
    const { state } = this.renderer;
    state.bindFramebuffer(gl.READ_FRAMEBUFFER, this.buffer);
    state.bindFramebuffer(gl.DRAW_FRAMEBUFFER, null);
    gl.blitFramebuffer(0, 0, width, height, 0, 0, width, height, gl.COLOR_BUFFER_BIT, gl.NEAREST);
    state.bindFramebuffer(gl.READ_FRAMEBUFFER, null);
    this.renderer.setRenderTarget(null);
  }

  private size(gl: WebGL2RenderingContext, width: number, height: number): void {
    if (this.buffer && this.sheet.width === width && this.sheet.height === height) return;
    this.sheet.setSize(width, height);
    if (!this.buffer) {
      this.buffer = gl.createFramebuffer();
      this.colours = gl.createRenderbuffer();
      this.depths = gl.createRenderbuffer();
      this.renderer.setRenderTargetFramebuffer!(this.sheet, this.buffer!);
    }
    this.renderer.state.bindFramebuffer(gl.FRAMEBUFFER, this.buffer);
    this.hold(gl, gl.COLOR_ATTACHMENT0, gl.RGBA8, this.colours);
    this.hold(gl, gl.DEPTH_ATTACHMENT, gl.DEPTH_COMPONENT24, this.depths);
  }

  private hold(
    gl: WebGL2RenderingContext,
    as: GLenum,
    format: GLenum,
    held: WebGLRenderbuffer | null,
  ): void {
    const { width, height } = this.sheet;
    gl.bindRenderbuffer(gl.RENDERBUFFER, held);
    gl.renderbufferStorageMultisample(gl.RENDERBUFFER, SAMPLES, format, width, height);
    gl.framebufferRenderbuffer(gl.FRAMEBUFFER, as, gl.RENDERBUFFER, held);
  }
}
