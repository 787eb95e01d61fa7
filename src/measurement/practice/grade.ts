/** One question of an answer that has been graded. */
export interface GradedItem {
  readonly item: 'endpoint' | 'mmol' | 'faults';
  readonly points: number;
  readonly of: number;
  /** Why, in a sentence. */
  readonly words: string;
}

/** What an answer gets. Plain data: it survives JSON. */
export interface Grade {
  readonly points: number;
  /** The points that there are. */
  readonly of: number;
  readonly items: readonly GradedItem[];
}
