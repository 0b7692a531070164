// How large letters must be to be read from afar. A capital of height h at a distance D is seen
// under an angle of 2 atan(h / 2D); 20 to 22 minutes of arc are preferred, 16 are the least
// (NUREG-0700, 1.3.1-4; ISO 9241-3).
export const WANTED_ARCMIN = 22;
export const LEAST_ARCMIN = 16;
export const CARD_MM = 85.6; // ISO/IEC 7810, ID-1
export const USUAL_INCHES = 24;

const ARCMIN = Math.PI / 180 / 60;
const MM_PER_INCH = 25.4;

export function millimetres(arcmin, metres) {
  return 2 * metres * 1000 * Math.tan((arcmin * ARCMIN) / 2);
}

export function arcmin(mm, metres) {
  return (2 * Math.atan(mm / (2 * metres * 1000))) / ARCMIN;
}

// CSS pixels a millimetre: as measured with a card, else from the diagonal that was said, else of a
// usual monitor. A window is never larger than its screen, whatever the browser says of that.
export function pixelsPerMm(perMetre, inches) {
  const across = Math.max(screen.width, innerWidth);
  const down = Math.max(screen.height, innerHeight);
  return perMetre > 0
    ? perMetre / 1000
    : Math.hypot(across, down) / ((inches || USUAL_INCHES) * MM_PER_INCH);
}

// How high a capital is in the page's own letters, of their size.
export function capital() {
  const context = document.createElement('canvas').getContext('2d');
  context.font = `700 200px ${getComputedStyle(document.documentElement).fontFamily}`;
  return context.measureText('H').actualBoundingBoxAscent / 200;
}

// What the screen was set to: {metres, perMm}.
export function setting() {
  const { distance, inchTenths, perMetre } = document.documentElement.dataset;
  return {
    metres: Number(distance),
    perMm: pixelsPerMm(Number(perMetre), Number(inchTenths) / 10),
  };
}

// The size of letters whose capitals are seen under an angle, in CSS pixels.
export function fontPixels(angle, { metres, perMm }) {
  return (millimetres(angle, metres) * perMm) / capital();
}

// The angle under which letters of a size are seen.
export function seen(pixels, { metres, perMm }) {
  return arcmin((pixels * capital()) / perMm, metres);
}
