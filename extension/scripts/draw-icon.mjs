// Draws images/icon.png: the load line on a ship's side, a circle crossed by a horizontal line. Run after changing it.
import { writeFileSync } from 'node:fs';
import { crc32, deflateSync } from 'node:zlib';

const SIZE = 256;
const SAMPLES = 4; // Per pixel and direction, for smooth edges.
const HULL = [22, 50, 79];
const WATER = [31, 92, 130];
const PAINT = [245, 240, 228];

/** The colour at a point of the picture, or undefined outside its rounded corners. */
function colourAt(x, y) {
  const corner = 44;
  const outside = (value) => Math.max(corner - value, value - (SIZE - corner), 0);
  if (Math.hypot(outside(x), outside(y)) > corner) {
    return undefined;
  }
  const ring = Math.abs(Math.hypot(x - SIZE / 2, y - SIZE / 2) - 66) <= 10;
  const line = Math.abs(y - SIZE / 2) <= 10 && Math.abs(x - SIZE / 2) <= 104;
  return ring || line ? PAINT : y < SIZE / 2 ? HULL : WATER;
}

function pixelAt(column, row) {
  const sum = [0, 0, 0];
  let hits = 0;
  for (let sample = 0; sample < SAMPLES * SAMPLES; sample++) {
    const x = column + ((sample % SAMPLES) + 0.5) / SAMPLES;
    const y = row + (Math.floor(sample / SAMPLES) + 0.5) / SAMPLES;
    const colour = colourAt(x, y);
    if (colour) {
      hits++;
      colour.forEach((value, channel) => {
        sum[channel] += value;
      });
    }
  }
  const alpha = Math.round((255 * hits) / (SAMPLES * SAMPLES));
  return [...sum.map((value) => (hits ? Math.round(value / hits) : 0)), alpha];
}

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const checksum = Buffer.alloc(4);
  checksum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, checksum]);
}

const header = Buffer.alloc(13);
header.writeUInt32BE(SIZE, 0);
header.writeUInt32BE(SIZE, 4);
header.set([8, 6], 8); // Eight bits a channel, red-green-blue-alpha.
const rows = Array.from({ length: SIZE }, (_, row) => [
  0, // No row filter.
  ...Array.from({ length: SIZE }, (_, column) => pixelAt(column, row)).flat(),
]);
const png = Buffer.concat([
  Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
  chunk('IHDR', header),
  chunk('IDAT', deflateSync(Buffer.from(rows.flat()), { level: 9 })),
  chunk('IEND', Buffer.alloc(0)),
]);
writeFileSync(new URL('../images/icon.png', import.meta.url), png);
