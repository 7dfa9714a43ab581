/** Thrown to leave a calculation that needs an answer which is not there yet. */
const WAITING = Symbol('waiting');

/** Does a calculation that calls a function which must answer at once, with one that may have to be waited for: each time it has to,
 *  the calculation is left, and begun anew when the answer is known. It must ask the same whenever it is answered the same.
 *  @param calculate - Gives a result from the answers; called again and again. */
export async function awaited<Asked, Answer, Result>(
  ask: (asked: Asked) => Answer | Promise<Answer>,
  calculate: (answer: (asked: Asked) => Answer) => Result,
): Promise<Result> {
  const known: Answer[] = [];
  for (;;) {
    let next = 0;
    let coming: Promise<Answer> | undefined;
    try {
      return calculate((asked) => {
        const at = next++;
        const answer = at < known.length ? known[at] : ask(asked);
        if (answer instanceof Promise) {
          coming = answer;
          throw WAITING;
        }
        return (known[at] = answer as Answer);
      });
    } catch (reason) {
      if (reason !== WAITING || !coming) throw reason;
    }
    known.push(await coming);
  }
}
