import { fileURLToPath } from "node:url";
import ts from "typescript";

/** One exported declaration of a package, with its doc comment. */
export interface PublicItem {
  readonly name: string;
  /** Path inside the package's `src`. */
  readonly file: string;
  readonly node: ts.Declaration;
  /** The comment's prose, tags left out. */
  readonly text: string;
  /** Tag name → texts, in order. */
  readonly tags: ReadonlyMap<string, readonly string[]>;
}

export interface PublicSurface {
  readonly checker: ts.TypeChecker;
  readonly items: readonly PublicItem[];
}

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Everything a package exports from its index. */
export function publicSurface(packageName: string): PublicSurface {
  const source = `${root}packages/${packageName}/src/`;
  const index = `${source}index.ts`;
  const config = ts.readConfigFile(`${root}packages/${packageName}/tsconfig.json`, ts.sys.readFile);
  const parsed = ts.parseJsonConfigFileContent(config.config, ts.sys, `${root}packages/${packageName}`);
  const program = ts.createProgram([index], { ...parsed.options, noEmit: true, composite: false });
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(index);
  const symbol = file && checker.getSymbolAtLocation(file);
  if (!symbol) throw new Error(`${index} exports nothing`);
  const items = checker.getExportsOfModule(symbol).flatMap((exported) => {
    const target = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    return (target.declarations ?? [])
      .filter((node) => node.getSourceFile().fileName.startsWith(source))
      .map((node) => describe(exported.name, node, source));
  });
  return { checker, items };
}

function describe(name: string, node: ts.Declaration, source: string): PublicItem {
  const holder = ts.isVariableDeclaration(node) ? node.parent.parent : node;
  const tags = new Map<string, string[]>();
  for (const tag of ts.getJSDocTags(holder)) {
    const text = ts.getTextOfJSDocComment(tag.comment) ?? "";
    const key = tag.tagName.text;
    tags.set(key, [...(tags.get(key) ?? []), text]);
  }
  return { name, file: node.getSourceFile().fileName.slice(source.length), node, text: commentText(holder), tags };
}

/** The prose of a node's own doc comments. */
export function commentText(node: ts.Node): string {
  return ts
    .getJSDocCommentsAndTags(node)
    .filter(ts.isJSDoc)
    .map((doc) => ts.getTextOfJSDocComment(doc.comment) ?? "")
    .join("\n");
}
