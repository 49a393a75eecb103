namespace Jumpwright.Safety.Conditions;

/// <summary>Heat from what a phone's weather page tells.</summary>
public static class HeatStress
{
    /// <summary>
    /// Wet-bulb globe temperature (WBGT), °C, from air temperature and humidity alone: 0.567 T + 0.393 e + 3.94 with the vapour
    /// pressure e in hPa = RH/100 · 6.105 · exp(17.27 T / (237.7 + T)). It takes a fairly sunny day with a light wind, so indoors
    /// or under cloud it reads high, in full sun without wind low.
    /// Source: Australian Bureau of Meteorology, approximation after ACSM 1984 (constants of the first equation from memory; the
    /// vapour pressure's were checked).
    /// </summary>
    /// <param name="airC">Temperature of the air in the shade, °C.</param>
    /// <param name="humidityPct">Relative humidity, % (0 to 100).</param>
    public static double WetBulbGlobeC(double airC, double humidityPct)
    {
        double vapourHPa = humidityPct / 100 * 6.105 * Math.Exp(17.27 * airC / (237.7 + airC));
        return (0.567 * airC) + (0.393 * vapourHPa) + 3.94;
    }
}
