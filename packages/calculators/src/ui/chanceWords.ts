/** Words of chances; apart from the others, as few tools say them. */
export const chanceWords = { nearlyCertain: 'over 99 %', nearlyImpossible: 'under 1 %' };
