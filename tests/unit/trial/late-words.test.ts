import { LocaleService, LocaleType, Univer } from "@univerjs/core";
import { closeWithWords } from "../../../src/trial/grid/late-words";

test("what asks for a word after the grid is closed gets it", () => {
  const locales = { [LocaleType.EN_US]: { list: { title: "Functions" } } };
  const univer = new Univer({ locale: LocaleType.EN_US, locales });
  const words = univer.__getInjector().get(LocaleService);
  closeWithWords(univer, locales);
  expect(words.t("list.title")).toBe("Functions");
});
