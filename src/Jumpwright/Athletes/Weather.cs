using NodaTime;

namespace Jumpwright.Athletes;

/// <summary>The air of a day where the squad trains, as somebody read or forecast it.</summary>
/// <param name="Date">The day.</param>
/// <param name="AirC">Temperature of the air in the shade, °C.</param>
/// <param name="HumidityPct">Relative humidity, %.</param>
public sealed record Weather(LocalDate Date, double AirC, double HumidityPct);
