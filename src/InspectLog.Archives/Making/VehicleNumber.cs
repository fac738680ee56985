namespace InspectLog.Archives.Making;

/// <summary>A vehicle identification number, partly hidden. Pure.</summary>
public static class VehicleNumber
{
    private const int Shown = 4;

    /// <summary>Its last signs, enough to compare it with the car's: four at most, and never more than a third of it. Null where that
    /// leaves nothing.</summary>
    public static string? Ending(string? vin)
    {
        var signs = (vin ?? "").Where(char.IsLetterOrDigit).ToArray();
        var shown = Math.Min(Shown, signs.Length / 3);
        return shown == 0 ? null : new string(signs[^shown..]);
    }
}
