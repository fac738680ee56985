using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Wear;

/// <summary>The units odometers show.</summary>
public static class OdometerUnits
{
    /// <summary>To choose from in a form.</summary>
    public static IReadOnlyList<(string Value, string Text)> Choices { get; } =
        [(Units.Kilometre.Symbol, "km"), (Units.Mile.Symbol, "miles")];

    /// <summary>Symbol of the unit this vehicle's odometer was last noted in; km before it was.</summary>
    public static string Of(VehicleState vehicle) => (KnownOdometer.LastOf(vehicle)?.Unit ?? Units.Kilometre).Symbol;
}
