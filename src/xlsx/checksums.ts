/** Signatures and lengths of a zip file's records. Source: PKWARE APPNOTE 4.3.12 and 4.3.16. */
const END_SIGNATURE = 0x06054b50;
const END_LENGTH = 22;
const ENTRY_SIGNATURE = 0x02014b50;
const ENTRY_LENGTH = 46;

/** Checksums by path, as the zip file's directory has them. Empty for a file of the larger kind (zip64). */
function storedChecksums(bytes: Uint8Array): Map<string, number> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const checksums = new Map<string, number>();
  let end = bytes.length - END_LENGTH;
  while (end >= 0 && view.getUint32(end, true) !== END_SIGNATURE) end--;
  let at = end < 0 ? bytes.length : view.getUint32(end + 16, true);
  while (at + ENTRY_LENGTH <= bytes.length && view.getUint32(at, true) === ENTRY_SIGNATURE) {
    const [name, extra, comment] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true)) as [
      number,
      number,
      number,
    ];
    const path = new TextDecoder().decode(bytes.subarray(at + ENTRY_LENGTH, at + ENTRY_LENGTH + name));
    checksums.set(path, view.getUint32(at + 16, true));
    at += ENTRY_LENGTH + name + extra + comment;
  }
  return checksums;
}

/** The first part whose bytes are not those that were packed; undefined where all are sound. */
export function damagedPart(bytes: Uint8Array, parts: Readonly<Record<string, Uint8Array>>): string | undefined {
  const stored = storedChecksums(bytes);
  return Object.entries(parts).find(([path, content]) => {
    const checksum = stored.get(path);
    return checksum !== undefined && checksum !== crc32(content);
  })?.[0];
}

/** The polynomial of CRC-32, its bits reversed. Source: PKWARE APPNOTE 4.4.7. */
const POLYNOMIAL = 0xedb88320;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ POLYNOMIAL : value >>> 1;
  return value;
});

function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (let index = 0; index < bytes.length; index++) value = (value >>> 8) ^ TABLE[(value ^ bytes[index]!) & 0xff]!;
  return (value ^ 0xffffffff) >>> 0;
}
