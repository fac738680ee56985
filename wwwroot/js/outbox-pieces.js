// Photos go in pieces, so that after a break only the rest has to be sent.

const largest = 256 * 1024;

/** Sends a file by pieces; gives its name, the SHA-256 of its bytes, once all of it is there. Null where it cannot go this way,
    and has to be sent as a whole. A line that breaks is thrown on. */
export async function sendInPieces(address, file, tell) {
  if (file.size <= largest || !crypto.subtle) {
    return null;
  }

  const name = hex(await crypto.subtle.digest("SHA-256", await file.arrayBuffer()));
  let have = await post(address, name, 0, new Blob());
  while (have !== null && have < file.size) {
    tell(have / file.size);
    const now = await post(address, name, have, file.slice(have, have + largest));
    if (now === have) {
      return null; // it takes no more of it: the form says why
    }

    have = now;
  }

  return have === null ? null : name;
}

/** Sends a piece; gives how much is there now, null where pieces are not taken. */
async function post(address, name, at, piece) {
  const answer = await fetch(`${address}/pieces/${name}?at=${at}`, {
    method: "POST",
    headers: { "Content-Type": "application/octet-stream" },
    body: piece,
    signal: AbortSignal.timeout(60_000),
  });
  if (answer.status >= 500 || answer.status === 429) {
    throw new Error(`${answer.status}`);
  }

  return answer.ok ? (await answer.json()).have : null;
}

function hex(bytes) {
  return [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
