namespace InspectLog.Journal.Index;

/// <summary>How far a journal has been read into the index.</summary>
internal sealed record PositionRow
{
    public required string Id { get; init; }

    public required long Sequence { get; init; }

    public required string Hash { get; init; }
}

/// <summary>Which wording the texts are of.</summary>
internal sealed record WordingRow
{
    /// <summary>Id of the one row.</summary>
    public const string Only = "texts";

    public required string Id { get; init; }

    public required string Version { get; init; }
}

/// <summary>A vehicle.</summary>
internal sealed record VehicleRow
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required string Description { get; init; }

    public required string? Picture { get; init; }

    public required DateTime LastChanged { get; init; }
}

/// <summary>An entry that can be found by its words.</summary>
internal sealed record TextRow
{
    public required string Id { get; init; }

    public required string Vehicle { get; init; }

    public required long Sequence { get; init; }

    public required long? Inspection { get; init; }

    public required DateTime Time { get; init; }

    public required string Actor { get; init; }

    public required string Text { get; init; }

    public required string[] Words { get; init; }
}

/// <summary>A recording to be transcribed.</summary>
internal sealed record WaitingRow
{
    public required string Id { get; init; }

    public required string Vehicle { get; init; }

    public required long Recording { get; init; }

    public required long Inspection { get; init; }

    public required DateTime Kept { get; init; }
}
