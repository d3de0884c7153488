/** Takes steps to their end at once, whatever they yield on the way, and gives what they come to. */
export function inOneGo<Value>(steps: Iterator<unknown, Value, void>): Value {
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}
