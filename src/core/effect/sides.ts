/** A value of the procedure before and of the one after. */
export interface Sides<Value> {
  readonly before: Value;
  readonly after: Value;
}
