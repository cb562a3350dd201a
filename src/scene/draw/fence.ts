/** Marks the end of what was sent to be drawn; the answer tells whether it is drawn. A lost picture has nothing to wait for. */
export function fenceAfter(gl: WebGL2RenderingContext): () => boolean {
  const fence = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0);
  gl.flush();
  if (fence === null) return () => true;
  return () => {
    const reached = gl.clientWaitSync(fence, 0, 0) !== gl.TIMEOUT_EXPIRED;
    if (reached) gl.deleteSync(fence);
    return reached;
  };
}
