/**
 * The least of Excel for Windows that the unmodified Office.js needs around its page: it names itself, answers what
 * the library asks of the open workbook, and hands over calls of functions and keys. Its shapes are read off the
 * library itself (office.js and excel-win32-16.01.js of 1.1.110), which is silent where Excel would speak first.
 * The workbook is an empty one: what is asked for by name is not there, and every list is empty.
 */
export interface StandIn {
  /** What the library has asked of the program: the names of the methods called and their arguments. */
  readonly asked: readonly (readonly [method: string, ...args: unknown[]])[];
  /** Hands over messages as the program sends them. */
  tell(entries: readonly Message[]): void;
}

/** A call of a worksheet function (category 1) or of an action behind keys (category 2). */
export interface Message {
  readonly messageCategory: 1 | 2;
  readonly messageType: 1000;
  readonly message: unknown;
}

declare global {
  interface Window {
    excelProgram: StandIn;
  }
}

/** Runs in the page before its own scripts. `sets` are the parts of Office.js that the program says it has. */
export function standIn(sets: Readonly<Record<string, string>>): void {
  interface ObjectPath {
    readonly Name: string;
    readonly ParentObjectPathId?: number;
  }
  interface Action {
    readonly Id: number;
    readonly ActionType: number;
    readonly Name: string;
    readonly ObjectPathId: number;
    readonly ArgumentInfo?: { readonly Arguments?: readonly unknown[] };
  }
  interface Request {
    readonly id: number;
    readonly message: {
      readonly body: {
        readonly Actions: readonly Action[];
        readonly ObjectPaths: Readonly<Record<number, ObjectPath>>;
      };
    };
  }

  const asked: [string, ...unknown[]][] = [];
  const bridge = { sendMessageToHost, onMessageFromHost: (text: string): void => void text };

  /** Office.js asks in batches of actions on paths of objects, and waits for a result of each action. */
  function sendMessageToHost(text: string): void {
    const { id, message } = JSON.parse(text) as Request;
    const { Actions, ObjectPaths } = message.body;
    const isMissing = ({ Name, ParentObjectPathId: parent }: ObjectPath): boolean =>
      Name.endsWith("OrNullObject") || (parent !== undefined && isMissing(ObjectPaths[parent]!));
    for (const { Name, ArgumentInfo } of Actions)
      if (Name !== "") asked.push([Name, ...(ArgumentInfo?.Arguments ?? [])]);
    const Results = Actions.map(({ Id, ObjectPathId }) => {
      const path = ObjectPaths[ObjectPathId];
      return { ActionId: Id, Value: path !== undefined && isMissing(path) ? { _IsNull: true } : { _Items: [] } };
    });
    const answer = { id, type: 2, message: { statusCode: 200, headers: {}, body: { Results } } };
    setTimeout(() => bridge.onMessageFromHost(JSON.stringify(answer)));
  }

  const context = {
    GetAppType: () => 1,
    GetSolutionRef: () => "add-in",
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 1,
    GetAppUILocale: () => 1033,
    GetAppDataLocale: () => 1033,
    GetDocUrl: () => "herd.xlsx",
    GetAppCapabilities: () => 0,
    GetActivationMode: () => 1,
    GetControlIntegrationLevel: () => 0,
    GetSolutionToken: () => "",
    GetSupportedMatrix: () => JSON.stringify(sets),
    GetSettings: () => ({ Read: () => undefined }),
    GetHostFullVersion: () => "16.0.0.0",
  };
  const external = {
    // 1: the pane and the functions share one page.
    GetHostInfo: () => "Excel|Win32|16.01|en-US|||disableLogging|1",
    GetContext: () => context,
    Execute: () => undefined,
    RegisterEvent: (_event: number, _target: string, _handler: unknown, done: (status: number) => void) => done(0),
    UnregisterEvent: (_event: number, _target: string, done: (status: number) => void) => done(0),
  };
  Object.defineProperty(window, "external", { value: external });
  Object.assign(window, {
    _richApiNativeBridge: bridge,
    excelProgram: {
      asked,
      tell: (entries: readonly Message[]) =>
        bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries } })),
    },
  });
}
