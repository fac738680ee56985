using System.CommandLine;
using InspectLog.App.Demo;

namespace InspectLog.App.Commands;

/// <summary>Starts the web app on the invented garage, in a folder that goes when the program stops.</summary>
internal sealed class DemoVerb : Verb
{
    private readonly Option<int> _port = ListeningPort.Option();
    private readonly NetworkChoice _network = new();
    private readonly Option<string?> _model = SpeechModelChoice.Option();
    private readonly Option<bool> _speechWhenNeeded = SpeechModelChoice.WhenNeededOption();
    private readonly Option<bool> _open = OwnBrowser.Option();

    public DemoVerb(Surroundings surroundings)
        : base(
            "demo",
            "Start the app with an invented garage to try everything on. It lies in a temporary folder and is gone when the program stops.",
            surroundings)
    {
        Add(_port);
        _network.AddTo(this);
        Add(_model);
        Add(_speechWhenNeeded);
        Add(_open);
    }

    public override IReadOnlyList<string> Examples => ["inspectlog demo"];

    public override TimeSpan? TimeToStop => Serving.TimeToStop;

    protected override async Task<int> RunAsync(ParseResult arguments, CancellationToken stop)
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-demo-");
        try
        {
            Surroundings.Error.WriteLine("Making the invented garage, which takes a few seconds.");
            DemoGarage.Make(folder.FullName, Surroundings.Time, DemoFiles.Shipped());
            return await Serving.RunAsync(
                Surroundings,
                folder.FullName,
                arguments.GetValue(_port),
                new SpeechStart(arguments.GetValue(_model), arguments.GetValue(_speechWhenNeeded)),
                _network.Of(arguments),
                arguments.GetValue(_open),
                stop,
                isInvented: true);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
