namespace InspectLog.Measuring;

/// <summary>Numbers that can be worked with: nothing that is measured on a vehicle comes near the largest, in any base
/// unit, and what is worked out of them stays finite.</summary>
public static class Workable
{
    /// <summary>The largest number taken, to either side of zero, in any unit.</summary>
    public const double Largest = 1e15;

    /// <summary>What to say of a larger one.</summary>
    public const string Problem = "No instrument shows a number that large. Check the number and its unit.";

    /// <summary>Whether a number is finite and not too large.</summary>
    public static bool Is(double number) => Math.Abs(number) <= Largest;
}
