namespace InspectLog.Browser.Tests.Support;

/// <summary>The demo garage, running for all tests of a class.</summary>
public sealed class DemoFixture : IAsyncLifetime
{
    private readonly TempFolder _folder = new();
    private RunningProgram? _program;

    internal RunningProgram Program => _program ?? throw new InvalidOperationException("The demo is not started yet.");

    public async ValueTask InitializeAsync() => _program = await RunningProgram.DemoAsync(_folder.Path);

    public async ValueTask DisposeAsync()
    {
        if (_program is not null)
        {
            await _program.DisposeAsync();
        }

        _folder.Dispose();
    }
}
