/**
 * Botanical names under which older books and dealers list a wood, with the name that stands in its record; both lead to it.
 * From memory: they help to find a wood and stand beside no figure.
 */
export const botanicalSynonyms: Readonly<Record<string, string>> = {
  'Acer saccharophorum': 'Acer saccharum',
  'Acer dasycarpum': 'Acer saccharinum',
  'Betula lutea': 'Betula alleghaniensis',
  'Castanopsis chrysophylla': 'Chrysolepis chrysophylla',
  'Cupressus nootkatensis': 'Chamaecyparis nootkatensis',
  'Callitropsis nootkatensis': 'Chamaecyparis nootkatensis',
  'Chlorophora excelsa': 'Milicia excelsa',
  'Dumoria heckelii': 'Tieghemella heckelii',
  'Afrormosia elata': 'Pericopsis elata',
  'Hicoria ovata': 'Carya ovata',
  'Hicoria pecan': 'Carya illinoensis',
  'Carya illinoinensis': 'Carya illinoensis',
  'Libocedrus decurrens': 'Calocedrus decurrens',
  'Notholithocarpus densiflorus': 'Lithocarpus densiflorus',
  'Pseudotsuga taxifolia': 'Pseudotsuga menziesii',
  'Quercus borealis': 'Quercus rubra',
  'Quercus pedunculata': 'Quercus robur',
  'Quercus sessiliflora': 'Quercus petraea',
  'Sarcocephalus diderrichii': 'Nauclea diderrichii',
  'Tarrietia utilis': 'Heritiera utilis',
  'Tilia glabra': 'Tilia americana',
  'Ulmus fulva': 'Ulmus rubra',
  'Ulmus racemosa': 'Ulmus thomasii',
};
