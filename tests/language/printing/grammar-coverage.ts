import { type CompositeCstNode, type CstNode, type Grammar, GrammarAST, GrammarUtils } from 'langium';

type Element = GrammarAST.AbstractElement;
type Facet = 'taken' | 'left out' | 'repeated' | 'chosen' | 'consumed';

/**
 * Which alternatives of a grammar the trees of a run have used: each branch of an alternative, each optional element
 * taken and left out, each repeated one repeated, each keyword, terminal and rule call consumed.
 *
 * A tree names the element of the grammar behind every leaf, so walking a rule's definition along the children of its
 * node tells which way the parser went.
 */
export class GrammarCoverage {
  private readonly grammar: Grammar;
  private readonly reached = new Map<Element, Map<Facet, boolean>>();
  private readonly places = new Map<Element, string>();
  private readonly beginnings = new Map<Element, ReadonlySet<Element>>();

  constructor(grammar: Grammar) {
    this.grammar = grammar;
    for (const rule of grammar.rules) {
      if (GrammarAST.isParserRule(rule)) this.collect(rule.definition, rule.name);
    }
  }

  /** Adds a tree without syntax errors. */
  add(root: CompositeCstNode): void {
    this.walkRule(GrammarUtils.getEntryRule(this.grammar)!, root);
  }

  count(): { readonly reached: number; readonly all: number } {
    const facets = [...this.reached.values()].flatMap((facets) => [...facets.values()]);
    return { reached: facets.filter(Boolean).length, all: facets.length };
  }

  /** `Rounds: "passes" consumed`: what no tree has used. */
  listUnreached(): string[] {
    return [...this.reached].flatMap(([element, facets]) =>
      [...facets].flatMap(([facet, reached]) =>
        reached ? [] : [`${this.places.get(element)}: ${print(element)} ${facet}`],
      ),
    );
  }

  private collect(element: Element, rule: string): void {
    const facets: Facet[] = [];
    if (element.cardinality === '?' || element.cardinality === '*') facets.push('taken', 'left out');
    if (element.cardinality === '+' || element.cardinality === '*') facets.push('repeated');
    if (GrammarAST.isKeyword(element) || GrammarAST.isRuleCall(element)) facets.push('consumed');
    this.places.set(element, rule);
    this.reached.set(element, new Map(facets.map((facet) => [facet, false])));
    for (const child of childrenOf(element)) {
      this.collect(child, rule);
      if (GrammarAST.isAlternatives(element)) this.reached.get(child)!.set('chosen', false);
    }
  }

  private mark(element: Element, facet: Facet): void {
    const facets = this.reached.get(element)!;
    if (facets.has(facet)) facets.set(facet, true);
  }

  private walkRule(rule: GrammarAST.AbstractParserRule, node: CompositeCstNode): void {
    const rest = node.content.filter((child) => !child.hidden);
    this.walk((rule as GrammarAST.ParserRule).definition, rest);
    if (rest.length > 0) throw new Error(`${rule.name} does not explain "${rest[0]!.text}"`);
  }

  /** Takes from the front of `rest` what an element explains. */
  private walk(element: Element, rest: CstNode[]): void {
    const optional = element.cardinality === '?' || element.cardinality === '*';
    const many = element.cardinality === '+' || element.cardinality === '*';
    let times = 0;
    while (times === 0 ? !optional || this.begins(element, rest) : many && this.begins(element, rest)) {
      this.walkOnce(element, rest);
      times++;
    }
    this.mark(element, times === 0 ? 'left out' : 'taken');
    if (times > 1) this.mark(element, 'repeated');
  }

  private walkOnce(element: Element, rest: CstNode[]): void {
    const fragment = fragmentOf(element);
    if (GrammarAST.isAlternatives(element)) this.choose(element, rest);
    else if (fragment) {
      this.walk(fragment.definition, rest);
      this.mark(element, 'consumed');
    } else if (GrammarAST.isKeyword(element) || GrammarAST.isRuleCall(element)) this.consume(element, rest);
    else for (const child of childrenOf(element)) this.walk(child, rest);
  }

  private choose(element: GrammarAST.Alternatives, rest: CstNode[]): void {
    const branch =
      element.elements.find((candidate) => this.begins(candidate, rest)) ?? element.elements.find(isNullable);
    if (!branch) throw new Error(`No branch of ${print(element)} explains "${rest[0]?.text}"`);
    this.mark(branch, 'chosen');
    this.walk(branch, rest);
  }

  private consume(element: GrammarAST.Keyword | GrammarAST.RuleCall, rest: CstNode[]): void {
    if (!isMark(element)) {
      const node = rest.shift();
      if (node?.grammarSource !== element)
        throw new Error(`${print(element)} is not what "${node?.text}" is`);
      const rule = GrammarAST.isRuleCall(element) ? element.rule.ref : undefined;
      if (GrammarAST.isParserRule(rule)) this.walkRule(rule, node as CompositeCstNode);
    }
    this.mark(element, 'consumed');
  }

  private begins(element: Element, rest: readonly CstNode[]): boolean {
    const source = rest[0]?.grammarSource;
    return source !== undefined && this.consumersIn(element).has(source);
  }

  /** Everything within an element that may stand behind a leaf or a node, which no other element shares. */
  private consumersIn(element: Element): ReadonlySet<Element> {
    const known = this.beginnings.get(element);
    if (known) return known;
    const fragment = fragmentOf(element);
    const children = fragment ? [fragment.definition] : childrenOf(element);
    const found = new Set<Element>(children.flatMap((child) => [...this.consumersIn(child)]));
    if (!fragment && children.length === 0) found.add(element);
    this.beginnings.set(element, found);
    return found;
  }
}

/** What the lexer puts around a line takes no room and has no leaf; a tree without syntax errors has it. */
function isMark(element: Element): boolean {
  return GrammarAST.isRuleCall(element) && ['BOE', 'BOL', 'NL'].includes(element.rule.$refText);
}

function childrenOf(element: Element): readonly Element[] {
  if (GrammarAST.isAssignment(element)) return [element.terminal];
  return GrammarAST.isGroup(element) || GrammarAST.isAlternatives(element) ? element.elements : [];
}

function fragmentOf(element: Element): GrammarAST.ParserRule | undefined {
  const rule = GrammarAST.isRuleCall(element) ? element.rule.ref : undefined;
  return GrammarAST.isParserRule(rule) && rule.fragment ? rule : undefined;
}

function isNullable(element: Element): boolean {
  if (element.cardinality === '?' || element.cardinality === '*') return true;
  if (GrammarAST.isAlternatives(element)) return element.elements.some(isNullable);
  return GrammarAST.isAction(element) || (GrammarAST.isGroup(element) && element.elements.every(isNullable));
}

/** An element roughly as the grammar writes it. */
function print(element: Element): string {
  const { cardinality = '' } = element;
  if (GrammarAST.isKeyword(element)) return `'${element.value}'${cardinality}`;
  if (GrammarAST.isRuleCall(element)) return `${element.rule.$refText}${cardinality}`;
  if (GrammarAST.isAction(element)) return '';
  if (GrammarAST.isAssignment(element)) {
    return `${element.feature}${element.operator}${print(element.terminal)}${cardinality}`;
  }
  const separator = GrammarAST.isAlternatives(element) ? ' | ' : ' ';
  return `(${childrenOf(element).map(print).filter(Boolean).join(separator)})${cardinality}`;
}
