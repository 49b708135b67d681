function bytesOf({ text, count }) {
  // Each letter carries 15 bits.
  const bytes = new Uint8Array(count);
  let held = 0, bits = 0, n = 0;
  for (let i = 0; i < text.length; i++) {
    held |= (text.charCodeAt(i) - 0x3400) << bits;
    bits += 15;
    while (bits >= 8 && n < count) {
      bytes[n++] = held & 255;
      held >>= 8;
      bits -= 8;
    }
  }
  return bytes;
}
