/** Names of the time-zone database, by area: at least one for every clock that is in use. */
export const zoneNames: Readonly<Record<string, string>> = {
  Africa:
    'Abidjan Accra Addis_Ababa Algiers Cairo Casablanca Johannesburg Khartoum Kinshasa Lagos Maputo Monrovia Nairobi Tripoli Tunis Windhoek',
  America:
    'Adak Anchorage Argentina/Buenos_Aires Asuncion Bogota Caracas Chicago Denver Edmonton Guatemala Halifax Havana Jamaica La_Paz Lima Los_Angeles Mexico_City Miquelon Montevideo New_York Noronha Nuuk Panama Phoenix Port-au-Prince Puerto_Rico Regina Santiago Sao_Paulo St_Johns Tijuana Toronto Vancouver Winnipeg',
  Antarctica: 'Troll',
  Asia: 'Almaty Amman Baghdad Baku Bangkok Beirut Colombo Damascus Dhaka Dubai Gaza Hong_Kong Irkutsk Jakarta Jerusalem Kabul Kamchatka Karachi Kathmandu Kolkata Kuala_Lumpur Manila Novosibirsk Riyadh Seoul Shanghai Singapore Taipei Tashkent Tbilisi Tehran Tokyo Ulaanbaatar Vladivostok Yakutsk Yangon Yekaterinburg Yerevan',
  Atlantic: 'Azores Bermuda Canary Cape_Verde Faroe Reykjavik South_Georgia Stanley',
  Australia: 'Adelaide Brisbane Darwin Eucla Hobart Lord_Howe Melbourne Perth Sydney',
  Europe:
    'Amsterdam Athens Belgrade Berlin Brussels Bucharest Budapest Chisinau Copenhagen Dublin Helsinki Istanbul Kyiv Lisbon London Madrid Minsk Moscow Oslo Paris Prague Riga Rome Sofia Stockholm Tallinn Vienna Vilnius Warsaw Zurich',
  Indian: 'Maldives Mauritius Reunion',
  Pacific:
    'Apia Auckland Chatham Easter Fiji Galapagos Gambier Guam Honolulu Kiritimati Marquesas Norfolk Noumea Pago_Pago Pitcairn Port_Moresby Tongatapu',
};
