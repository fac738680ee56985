using InspectLog.App.Demo;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Demo;

/// <content>Readings that are decided with those of another check.</content>
public sealed partial class StoryTests
{
    /// <summary>What the other check of a comparison read last before a step.</summary>
    private static MeasureStep? Other(StoryInspection inspection, Comparison by, MeasureStep step) => inspection.Steps
        .Select(one => one.What).TakeWhile(what => !ReferenceEquals(what, step)).OfType<MeasureStep>()
        .LastOrDefault(one => one.Check == by.CheckId && (!by.AtSamePlace || one.Cylinder == step.Cylinder));

    private static DisplayedReading Displayed(MeasureStep step)
    {
        var instrument = InstrumentFor(step.Instrument, step.Unit);
        return new([.. step.Values.Select(Units.Find(step.Unit)!.ToBase)], instrument.Accuracy, instrument.Resolution);
    }
}
