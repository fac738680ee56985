namespace InspectLog.Measuring;

/// <summary>How a reading is put together with that of another check before it is decided.</summary>
public enum ComparisonForm
{
    /// <summary>The other reading less this one: how far this one lies below it, as the volts lost on the way.</summary>
    Difference,

    /// <summary>This reading divided by the other: how much there is for each unit of the other, as ohms for each
    /// millimetre.</summary>
    Proportion,
}
