import { stillUncertain } from "../table-error";

/** Looks at a write that was begun before; where that fails nobody knows more of it than before. */
export async function stillOpen<T>(look: () => Promise<T>): Promise<T> {
  try {
    return await look();
  } catch (error) {
    throw stillUncertain(error);
  }
}
