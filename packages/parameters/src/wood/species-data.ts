// Wood as the handbooks tabulate it. One row a species and table; no value stands here without its source, and none is filled in.

/** Not tabulated: stays unknown. */
const none = undefined;
type Value = number | undefined;

/** A strength or stiffness of clear, straight-grained wood at 12 % moisture. */
export type StrengthName =
  | "specificGravity"
  | "bending"
  | "elasticity"
  | "compressionAlong"
  | "compressionAcross"
  | "shearAlong"
  | "hardness";

/**
 * Specific gravity (ovendry weight on volume at 12 %, where the source does not say green), modulus of rupture MPa,
 * modulus of elasticity GPa, compression along and across the grain MPa, shear along the grain MPa, side hardness N;
 * the source; which of the values were written from memory and still await a look at the original.
 * @see Wood Handbook (FPL-GTR-190, 2010), tables 5-3 and 5-5, metric
 */
export type StrengthRow = readonly [
  species: string,
  latin: string,
  specificGravity: Value,
  bending: Value,
  elasticity: Value,
  compressionAlong: Value,
  compressionAcross: Value,
  shearAlong: Value,
  hardness: Value,
  source: string,
  fromMemory: readonly StrengthName[] | "all",
];

/** Change across the grain per percent of moisture, radial and tangential. @see Wood Handbook, table 13-5 */
export type CoefficientRow = readonly [species: string, radial: number, tangential: number, source: string];

/** Shrinkage from green to ovendry, percent: radial, tangential, of the volume. @see Wood Handbook, tables 4-3 and 4-4 */
export type ShrinkageRow = readonly [
  species: string,
  radial: number,
  tangential: number,
  volume: number,
  source: string,
];

// biome-ignore format: one row a species
export const STRENGTHS: readonly StrengthRow[] = [
  ["Maple, sugar", "Acer saccharum", 0.63, 109, 12.6, 54, 10.1, 16.1, 6400, "ALL read, metric, engdatabase.com/data/wood-properties/maple-sugar: 109 MPa, 12.6 GPa, 54.0, 10.1, 16.1 MPa, 6400 N", []],
  ["Maple, red", "Acer rubrum", 0.54, 92, 11.3, 45.1, 6.9, 12.8, 4200, "SG,MOE read synthmind.com/Tree_Species_Strength_Properties.htm; MOR,hardness read northwesthardwoods.com hickory table; C_par,C_perp,shear from memory", ["compressionAlong", "compressionAcross", "shearAlong"]],
  ["Beech, American", "Fagus grandifolia", 0.64, 103, 11.9, 50.3, 7, 13.9, 5800, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR read woodworkingnetwork.com strength-and-density-predictors; hardness read tropicalforestproducts.com/beech", []],
  ["Birch, yellow", "Betula alleghaniensis", 0.62, 114, 13.9, 56.3, 6.7, 13, 5600, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR read woodworkingnetwork.com strength-and-density-predictors; hardness read northwesthardwoods.com hickory table", []],
  ["Birch, sweet", "Betula lenta", 0.65, 117, 15, 58.9, 7.4, 15.4, 6500, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR (117 MPa) read matmake.com/properties/modulus-of-rupture-of-wood.html; hardness from memory", ["hardness"]],
  ["Ash, white", "Fraxinus americana", 0.6, 103, 12, 51.1, 8, 13.2, 5900, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR read woodworkingnetwork.com strength-and-density-predictors; hardness read northwesthardwoods.com hickory table", []],
  ["Cherry, black", "Prunus serotina", 0.5, 85, 10.3, 49, 4.8, 11.7, 4200, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR,hardness read northwesthardwoods.com hickory table", []],
  ["Walnut, black", "Juglans nigra", 0.55, 101, 11.6, 52.3, 7, 9.4, 4500, "MOR,MOE,hardness read northwesthardwoods.com hickory table; rest from memory", ["specificGravity", "compressionAlong", "compressionAcross", "shearAlong"]],
  ["Oak, white", "Quercus alba", 0.68, 105, 12.3, 51.3, 7.4, 13.8, 6000, "SG,MOR read woodworkingnetwork.com strength-and-density-predictors (prints 7400 for C_par); C_perp,hardness read metrohardwoods.com/mh_products/white-oak; MOE,C_par,shear from memory", ["elasticity", "compressionAlong", "shearAlong"]],
  ["Oak, northern red", "Quercus rubra", 0.63, 99, 12.5, 46.6, 7, 12.3, 5700, "SG,MOR,C_par read woodworkingnetwork.com strength-and-density-predictors; C_perp,hardness read midwesthardwood.com/mh_products/red-oak; MOE,shear from memory", ["elasticity", "shearAlong"]],
  ["Hickory, mockernut", "Carya tomentosa", 0.72, 132, 15.3, 61.6, 11.9, 12, 8800, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR read woodworkingnetwork.com strength-and-density-predictors; hardness read w00dworking.com (not in every Wood Handbook edition)", []],
  ["Hickory, pignut", "Carya glabra", 0.75, 139, 15.6, 63.4, 13.7, 14.8, 9500, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR (139 MPa) read matmake.com/properties/modulus-of-rupture-of-wood.html; hardness read w00dworking.com", []],
  ["Hickory, shagbark", "Carya ovata", 0.72, 139, 14.9, 63.5, 12.1, 16.8, 8400, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR (139 MPa) read matmake.com/properties/modulus-of-rupture-of-wood.html; hardness read bois-exotique.com", []],
  ["Hickory, pecan", "Carya illinoinensis", 0.66, 94, 11.9, 54.1, 11.9, 14.3, 8100, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR,hardness read oakbrookwoodturningsupply.com pecan", []],
  ["Honeylocust", "Gleditsia triacanthos", none, 101, 11.2, 51.7, 12.7, 15.5, 7000, "MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm (SG at 12% not tabulated; green SG 0.60 from memory); MOR (101 MPa) read matmake.com/properties/modulus-of-rupture-of-wood.html; hardness read w00dworking.com", []],
  ["Locust, black", "Robinia pseudoacacia", 0.69, 134, 14.1, 70.2, 12.6, 17.1, 7600, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR,hardness read borosawmill.com/black-locust", []],
  ["Elm, American", "Ulmus americana", 0.5, 81, 9.2, 38.1, 4.8, 10.4, 3700, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR (81 MPa) read matmake.com/properties/modulus-of-rupture-of-wood.html; hardness from memory", ["hardness"]],
  ["Elm, rock", "Ulmus thomasii", 0.63, 102, 10.6, 48.6, 8.5, 13.2, 5900, "SG,MOE,C_par,C_perp,shear read synthmind.com/Tree_Species_Strength_Properties.htm; MOR (102 MPa) read matmake.com/properties/modulus-of-rupture-of-wood.html; hardness from memory", ["hardness"]],
  ["Sycamore, American", "Platanus occidentalis", 0.49, 69, 9.8, 37.1, 4.8, 10.1, 3400, "from memory", "all"],
  ["Persimmon, common", "Diospyros virginiana", none, 122, 13.9, 63.2, none, none, 10200, "NOT in Table 5-3; from memory (other USDA lists); low confidence", "all"],
  ["Dogwood, flowering", "Cornus florida", none, 103, 10.5, 53.1, none, none, 9600, "NOT in Table 5-3; from memory; hardness 2150 read w00dworking.com (which prints 8700 psi crushing); MOR 105 MPa read matmake.com/properties/modulus-of-rupture-of-wood.html; low confidence", ["bending", "elasticity", "compressionAlong"]],
  ["Hophornbeam, eastern", "Ostrya virginiana", none, 97, 11.7, 53.5, none, none, 8300, "NOT in Table 5-3; from memory; low confidence", "all"],
  ["Ipe", "Handroanthus (Tabebuia) spp.", 0.92, 175, 21.6, 89.7, none, 14.2, 16400, "Table 5-5 (SG is green basis); MOR 25360, MOE, C_par, hardness read plyseas.com topic/8472 (US Forest Service); SG, shear from memory; C_perp not tabulated", ["specificGravity", "shearAlong"]],
  ["Jatoba (courbaril)", "Hymenaea courbaril", 0.71, 134, 14.9, 65.6, none, 17, 10500, "Table 5-5 (SG green basis); from memory", "all"],
  ["Purpleheart", "Peltogyne spp.", 0.67, 132, 15.7, 71.2, none, 15.3, 8300, "Table 5-5 (SG green basis); ALL read docslib.org/doc/13193684 (19220 psi)", []],
  ["Rosewood, Brazilian", "Dalbergia nigra", 0.8, 131, 13, 66.2, none, 14.5, 12100, "Table 5-5 (SG green basis); from memory", "all"],
  ["Rosewood, Indian", "Dalbergia latifolia", 0.75, 117, 12.3, 63.6, none, 14.4, 14100, "Table 5-5 (SG green basis); from memory", "all"],
  ["Lignum vitae", "Guaiacum spp.", 1.05, none, none, 78.6, none, none, 20000, "Table 5-5 (SG green basis); from memory; no bending data tabulated", "all"],
  ["Beech, European", "Fagus sylvatica", none, 110, 14.3, 57, none, none, 6400, "not Wood Handbook; read fdocuments.net european-beech (quotes a wood reference)", []],
];

const READ_13_5 = "Table 13-5; read: issuhub.com/view/index/5801?pageIndex=307 (scan of FPL-GTR-190 p.13-16)";

// biome-ignore format: one row a species
export const COEFFICIENTS: readonly CoefficientRow[] = [
  ["Apple", 0.00205, 0.00376, READ_13_5],
  ["Ash, white", 0.00169, 0.00274, READ_13_5],
  ["Beech, American", 0.00190, 0.00431, READ_13_5],
  ["Birch, yellow", 0.00256, 0.00338, READ_13_5],
  ["Birch, sweet", 0.00256, 0.00338, READ_13_5],
  ["Cherry, black", 0.00126, 0.00248, READ_13_5],
  ["Elm, American", 0.00144, 0.00338, READ_13_5],
  ["Elm, rock", 0.00165, 0.00285, READ_13_5],
  ["Hickory, pecan", 0.00169, 0.00315, READ_13_5],
  ["Honeylocust", 0.00144, 0.00230, READ_13_5],
  ["Locust, black", 0.00158, 0.00252, READ_13_5],
  ["Maple, red", 0.00137, 0.00289, READ_13_5],
  ["Maple, sugar", 0.00165, 0.00353, READ_13_5],
  ["Maple, black", 0.00165, 0.00353, READ_13_5],
  ["Red oak, commercial", 0.00158, 0.00369, READ_13_5],
  ["White oak, commercial", 0.00180, 0.00365, READ_13_5],
  ["Live oak", 0.00230, 0.00338, READ_13_5],
  ["Persimmon, common", 0.00278, 0.00403, READ_13_5],
  ["Sycamore, American", 0.00172, 0.00296, READ_13_5],
  ["Walnut, black", 0.00190, 0.00274, READ_13_5],
  ["Sweetgum", 0.00183, 0.00365, READ_13_5],
  ["Tupelo, black", 0.00176, 0.00308, READ_13_5],
  ["Madrone, Pacific", 0.00194, 0.00451, READ_13_5],
  ["Hickory, true", 0.00259, 0.00411, "Table 13-5; C_R from memory; C_T 0.00411 read second-hand at highwayflooring.com/hardwood-floor-relative-stability"],
  ["White fir (ch.13 example)", 0.00112, 0.00245, "Table 13-5; C_R read issuhub pageIndex=308; C_T back-computed from the read answer 1.7 mm and memory"],
  ["Teak", 0.00101, 0.00186, "Table 13-5 imported; from memory"],
  ["Mahogany (Swietenia)", 0.00172, 0.00238, "Table 13-5 imported; from memory"],
  ["Greenheart", 0.00390, 0.00430, "Table 13-5 imported; from memory"],
  ["Iroko", 0.00153, 0.00205, "Table 13-5 imported; from memory"],
  ["Ipe", 0.00230, 0.00282, "NOT tabulated: computed S/(3000-20S); S read: plyseas.com/bolger-group-archive/topic/8472 (quotes US Forest Service)"],
  ["Jatoba (courbaril)", 0.00155, 0.00300, "NOT tabulated: computed S/(3000-20S); S from memory Table 4-4; C_T agrees with 0.00300 read at highwayflooring.com"],
  ["Purpleheart", 0.00109, 0.00212, "NOT tabulated: computed S/(3000-20S); S from memory Table 4-4; C_T agrees with 0.00212 read at highwayflooring.com"],
  ["Rosewood, Brazilian", 0.00099, 0.00158, "NOT tabulated: computed S/(3000-20S); S from memory Table 4-4"],
  ["Rosewood, Indian", 0.00092, 0.00201, "NOT tabulated: computed S/(3000-20S); S from memory Table 4-4"],
  ["Lignum vitae", 0.00194, 0.00330, "NOT tabulated: computed S/(3000-20S); S from memory, not Wood Handbook; low confidence"],
  ["Hophornbeam, eastern", 0.00300, 0.00357, "NOT tabulated: computed S/(3000-20S); S from memory, not in Table 4-3; low confidence"],
  ["Hornbeam, American", 0.00198, 0.00411, "NOT tabulated: computed S/(3000-20S); S from memory; low confidence"],
  ["Hornbeam, European", 0.00237, 0.00415, "NOT tabulated: computed S/(3000-20S); S from memory; low confidence"],
  ["Beech, European", 0.00198, 0.00419, "NOT tabulated: computed S/(3000-20S); S read: fdocuments.net european-beech-wood-timbers-list (quotes a wood reference)"],
  ["Dogwood, flowering", 0.00259, 0.00427, "NOT tabulated: computed S/(3000-20S); S from memory; low confidence"],
  ["Pear", 0.00133, 0.00407, "NOT tabulated: computed S/(3000-20S); S from memory; low confidence"],
];

const READ_4_3 = "Table 4-3; read: issuhub.com/view/index/5801?pageIndex=85 (scan of FPL-GTR-190 p.4-6)";

// biome-ignore format: one row a species
export const SHRINKAGES: readonly ShrinkageRow[] = [
  ["Ash, white", 4.9, 7.8, 13.3, READ_4_3],
  ["Beech, American", 5.5, 11.9, 17.2, READ_4_3],
  ["Birch, yellow", 7.3, 9.5, 16.8, READ_4_3],
  ["Birch, sweet", 6.5, 9, 15.6, READ_4_3],
  ["Cherry, black", 3.7, 7.1, 11.5, READ_4_3],
  ["Elm, American", 4.2, 9.5, 14.6, READ_4_3],
  ["Elm, rock", 4.8, 8.1, 14.9, READ_4_3],
  ["Hickory, pecan", 4.9, 8.9, 13.6, READ_4_3],
  ["Hickory, mockernut", 7.7, 11, 17.8, READ_4_3],
  ["Hickory, pignut", 7.2, 11.5, 17.9, READ_4_3],
  ["Oak, white", 5.6, 10.5, 16.3, READ_4_3],
  ["Oak, chestnut", 5.3, 10.8, 16.4, READ_4_3],
  ["Oak, live", 6.6, 9.5, 14.7, READ_4_3],
  ["Persimmon, common", 7.9, 11.2, 19.1, READ_4_3],
  ["Sycamore, American", 5, 8.4, 14.1, READ_4_3],
  ["Walnut, black", 5.5, 7.8, 12.8, READ_4_3],
  ["Sweetgum", 5.3, 10.2, 15.8, READ_4_3],
  ["Hickory, shagbark", 7, 10.5, 16.7, "Table 4-3; R/T/V read second-hand bois-exotique.com/product/hickory"],
  ["Hickory, shellbark", 7.6, 12.6, 19.2, "Table 4-3; from memory"],
  ["Maple, sugar", 4.8, 9.9, 14.7, "Table 4-3; read second-hand engdatabase.com/data/wood-properties/maple-sugar"],
  ["Maple, red", 4, 8.2, 12.6, "Table 4-3; R,T read second-hand northwesthardwoods.com hickory page table; V from memory; R,T reproduce the read C_R,C_T"],
  ["Oak, northern red", 4, 8.6, 13.7, "Table 4-3; R,T read second-hand northwesthardwoods.com; V from memory"],
  ["Oak, bur (white group)", 4.4, 8.8, 12.7, "Table 4-3; read second-hand engdatabase.com/data/wood-properties/oak-white-bur"],
  ["Honeylocust", 4.2, 6.6, 10.8, "Table 4-3; from memory; R,T reproduce the read C_R,C_T"],
  ["Locust, black", 4.6, 7.2, 10.2, "Table 4-3; read second-hand borosawmill.com/black-locust"],
  ["Ipe", 6.6, 8, 13.2, "Table 4-4 value from memory; same numbers read plyseas.com topic/8472 (US Forest Service)"],
  ["Jatoba (courbaril)", 4.5, 8.5, 12.7, "Table 4-4; from memory"],
  ["Purpleheart", 3.2, 6.1, 9.9, "Table 4-4; from memory; 3/6/10 rounded read docslib.org/doc/13193684"],
  ["Rosewood, Brazilian", 2.9, 4.6, 8.5, "Table 4-4; from memory"],
  ["Rosewood, Indian", 2.7, 5.8, 8.5, "Table 4-4; from memory"],
  ["Teak", 2.5, 5.8, 7, "Table 4-4; from memory"],
  ["Mahogany, true", 3, 4.1, 7.8, "Table 4-4; from memory (scan row order in fliphtml5 page 87 is scrambled)"],
  ["Lignum vitae", 5.6, 9.3, 14, "not Wood Handbook; from memory; low confidence"],
  ["Hophornbeam, eastern", 8.5, 10, 18.6, "not in Table 4-3; from memory; low confidence"],
  ["Hornbeam, American", 5.7, 11.4, 19.1, "not in Table 4-3; from memory; low confidence"],
  ["Hornbeam, European", 6.8, 11.5, 18.4, "not in Table 4-3; from memory; low confidence"],
  ["Beech, European", 5.7, 11.6, 17.3, "read fdocuments.net european-beech (wood reference quote)"],
  ["Dogwood, flowering", 7.4, 11.8, 19.9, "not in Table 4-3; from memory; low confidence"],
  ["Pear", 3.9, 11.3, 13.8, "not in Table 4-3; from memory; low confidence"],
  ["Apple", 5.6, 10.1, 17.6, "not in Table 4-3; from memory; low confidence; does not exactly reproduce the Table 13-5 apple row"],
];
