/** The half width of a rectangular distribution over its standard deviation: GUM (JCGM 100:2008), 4.3.7. @internal */
export const rectangularHalfWidth: number = /*#__PURE__*/ Math.sqrt(3);

/** The half width of a triangular distribution over its standard deviation: GUM, 4.3.9. @internal */
export const triangularHalfWidth: number = /*#__PURE__*/ Math.sqrt(6);
