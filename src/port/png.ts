/** Pixels of the PNG for each of the picture's, so that it is sharp on paper and on fine screens. */
const fineness = 3;

/** The address of a picture that carries all of it. */
export const addressOfSvg = (svg: string): string => `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;

/** A picture by its address, drawn so many pixels wide and high; the PNG's bytes as base64 text. */
export async function drawPng(address: string, width: number, height: number): Promise<string> {
  const image = new Image();
  image.src = address;
  await image.decode();
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width: width * fineness, height: height * fineness });
  const pen = canvas.getContext("2d");
  if (!pen) throw new Error("The picture could not be drawn.");
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL("image/png").replace(/^[^,]*,/, "");
}

export const bytesOf = (base64: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
