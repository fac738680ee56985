using System.Globalization;
using CsCheck;

namespace InspectLog.Archives.Tests.Model;

/// <summary>The life of a garage against a model of a few lists: whatever is written, backed up, put back, exported, taken in,
/// withheld, erased or broken off in whatever order, the garage is what the model says. <c>INSPECTLOG_MODEL=10000</c> for a long
/// run.</summary>
public sealed class WholeLifeTests
{
    private static long Runs => long.Parse(Environment.GetEnvironmentVariable("INSPECTLOG_MODEL") ?? "300", CultureInfo.InvariantCulture);

    [Fact]
    [Trait("Takes", "long")]
    public Task Garage_is_what_the_model_says_whatever_is_done_to_it() => LifeStep.Generated.Array[1, 20].SampleAsync(
        async steps =>
        {
            using var world = new LifeWorld();
            await world.DoAsync(new LifeStep.Add());
            foreach (var step in steps)
            {
                await world.DoAsync(step);
            }

            world.End();
        },
        iter: Runs,
        threads: 2);
}
