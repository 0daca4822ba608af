import { BaseFunction, ErrorType, ErrorValueObject } from "@univerjs/engine-formula";
import type { EngineFunction, EngineResult } from "../engine-function";

/** IMAGE fetches a picture from the address it is given. No host of the engine asks anything of the network. */
class Image extends BaseFunction {
  override calculate(): EngineResult {
    return ErrorValueObject.create(ErrorType.NA);
  }
}

export const image: EngineFunction = [Image, "IMAGE"];
