export const celsiusOfFahrenheit = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
