import { fickMean, fickMeanFreeFace, fickProfile, workingDiffusion } from './diffusion.ts';
import { humidityRatio, relativeHumidity, saturationPressure } from './psychrometrics.ts';
import { indoorAir } from './rooms.ts';
import { equilibriumMoisture, equilibriumMoisture2021, relativeHumidityFor2021 } from './sorption.ts';

/** Every equation of the room, for the Equations page. */
export const equations = [
  equilibriumMoisture,
  equilibriumMoisture2021,
  relativeHumidityFor2021,
  saturationPressure,
  humidityRatio,
  relativeHumidity,
  indoorAir,
  fickMean,
  fickMeanFreeFace,
  fickProfile,
  workingDiffusion,
] as const;
