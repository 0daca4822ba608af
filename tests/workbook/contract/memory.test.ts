import { tablePortContract } from "./contract";
import { openMemoryBook } from "./memory-book";

tablePortContract({ name: "memory", open: async (tables) => (await openMemoryBook(tables)).test }, { runs: 200 });
