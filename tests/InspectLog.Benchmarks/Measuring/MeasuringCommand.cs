using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace InspectLog.Benchmarks.Measuring;

/// <summary>Runs the benchmarks of the measuring room.</summary>
internal static class MeasuringCommand
{
    // In this process, so that nothing but this project has to be built first.
    internal static int Run()
    {
        BenchmarkRunner.Run<DecisionBenchmark>(
            DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)));
        return 0;
    }
}
