namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Cylinders named together without naming each: "the first three", "the odd ones", "from four onwards".</summary>
/// <param name="Kind">How they are chosen.</param>
/// <param name="Number">How many there are, or where they begin or end; of no meaning for the odd and the even ones.</param>
internal readonly record struct CylinderGroup(CylinderGroupKind Kind, int Number = 0)
{
    /// <summary>The cylinders it names on an engine; none where the engine has none of them.</summary>
    /// <param name="cylinders">How many cylinders the engine has.</param>
    public IReadOnlyList<int> Of(int cylinders)
    {
        var group = this;
        return [.. Enumerable.Range(1, cylinders).Where(cylinder => group.Holds(cylinder, cylinders))];
    }

    private bool Holds(int cylinder, int cylinders) => Kind switch
    {
        CylinderGroupKind.First => cylinder <= Number,
        CylinderGroupKind.Last => cylinder > cylinders - Number,
        CylinderGroupKind.From => cylinder >= Number,
        CylinderGroupKind.After => cylinder > Number,
        CylinderGroupKind.Before => cylinder < Number,
        CylinderGroupKind.Odd => cylinder % 2 == 1,
        _ => cylinder % 2 == 0,
    };
}

/// <summary>How the cylinders of a group are chosen.</summary>
internal enum CylinderGroupKind
{
    /// <summary>So many, or up to this one: "the first three", "up to three".</summary>
    First,

    /// <summary>So many from the end: "the last two".</summary>
    Last,

    /// <summary>This one and those after it: "from four onwards".</summary>
    From,

    /// <summary>Those after this one: "everything after three".</summary>
    After,

    /// <summary>Those before this one: "the plugs below three".</summary>
    Before,

    /// <summary>"The odd ones".</summary>
    Odd,

    /// <summary>"The even numbers".</summary>
    Even,
}
