namespace InspectLog.Journal.Storage;

/// <summary>The latches of a garage: one for each thing that is written to by itself.</summary>
internal sealed class WriteLatches
{
    /// <param name="closed">Why nothing can be written from the beginning; null where it can.</param>
    public WriteLatches(GarageProblem? closed = null)
    {
        Gate = new(closed);
        Workshop = new(Gate, LatchWords.OfWorkshop());
        Media = new(Gate, LatchWords.OfMedia());
        Sheets = new(Gate, LatchWords.OfSheets());
        Adding = new(Gate, LatchWords.OfAdding());
    }

    /// <summary>What closes all of them.</summary>
    public WriteGate Gate { get; }

    /// <summary>The latch of the workshop's journal.</summary>
    public WriteLatch Workshop { get; }

    /// <summary>The latch of recordings and photos.</summary>
    public WriteLatch Media { get; }

    /// <summary>The latch of check sheets.</summary>
    public WriteLatch Sheets { get; }

    /// <summary>The latch of vehicles that are being added, until they have their place.</summary>
    public WriteLatch Adding { get; }

    /// <summary>A latch for the journal of a vehicle.</summary>
    /// <param name="id">The vehicle.</param>
    /// <param name="name">What people call it, asked for when something fails.</param>
    public WriteLatch OfVehicle(string id, Func<string> name) => new(Gate, LatchWords.OfVehicle(id, name));

    /// <summary>What is wrong with what is no vehicle's.</summary>
    public IEnumerable<GarageProblem> Problems =>
        new[] { Gate.Problem, Workshop.Problem, Media.Problem, Sheets.Problem, Adding.Problem }.OfType<GarageProblem>();
}
