declare const counts: unique symbol;

/** A number with the name of its quantity in its type. A literal is accepted, another quantity is not. */
export type Quantity<Name extends string> = number & { readonly [counts]?: Name };

/** −log10 of the hydrogen-ion activity. */
export type PH = Quantity<'pH'>;

/** −log10 of the hydrogen-ion concentration in mol/L. */
export type PcH = Quantity<'pcH'>;
