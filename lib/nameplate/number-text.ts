/**
 * One or several figures as stamped: "7 1/2", "7½", "1,450", "230/460", "208-230/460", "380-420Y/220-240D". A capital
 * O or I or a small L among figures is kept, so that the reader can say what it looks like.
 */
const FIGURE = String.raw`(?:\d{1,4}(?: |-)[1-7]/[23458](?![\d/])|[1-7]/[23458](?![\d./])|(?:[OIl|]*\d[\dOIl|]*(?:[.,'][\dOIl|]+)*|[.,]\d+)?[½⅓⅔¼¾⅛⅜⅝⅞]|(?:[OIl|]*\d[\dOIl|]*(?:[.,'][\dOIl|]+)*|[.,]\d+))`;
const LETTERS = '(?: ?(?:Δ|YY|Y|D)(?![A-Za-z]))?';

export const numberText = new RegExp(`${FIGURE}${LETTERS}(?:(?: ?/ ?|-)${FIGURE}${LETTERS}|(?: ?/ ?)(?=Δ))*`, 'y');
