declare function withPlainFields(source: string): string;
export = withPlainFields;
