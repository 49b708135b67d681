function bytesOf({ text, count }) {
  // Two letters carry 31 bits: each is one of 46341, in two runs.
  const bytes = new Uint8Array(count + 5), at = i => { const c = text.charCodeAt(i); return c < 0xe000 ? c - 0x3400 : c - 0xe000 + 41984; };
  for (let i = 0, place = 0; i < text.length; i += 2, place += 31) {
    const bits = at(i) * 46341 + at(i + 1), over = place & 7, n = place >>> 3, rest = bits >>> (8 - over);
    bytes[n] |= bits << over;
    bytes[n + 1] = rest;
    bytes[n + 2] = rest >>> 8;
    bytes[n + 3] = rest >>> 16;
    bytes[n + 4] = rest >>> 24;
  }
  return bytes.subarray(0, count);
}
