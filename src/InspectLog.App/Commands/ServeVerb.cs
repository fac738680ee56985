using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>Starts the web app on a data folder.</summary>
internal sealed class ServeVerb : Verb
{
    private readonly Option<string> _data = DataFolder.Option("Folder of the journals, recordings and photos; made when missing.");
    private readonly Option<int> _port = ListeningPort.Option();
    private readonly Option<string?> _model = SpeechModelChoice.Option();

    public ServeVerb(Surroundings surroundings)
        : base("serve", "Start the app on this computer and print its address. Ctrl+C stops it.", surroundings)
    {
        Add(_data);
        Add(_port);
        Add(_model);
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog serve",
        "inspectlog serve --data /srv/garage --port 8080",
    ];

    public override TimeSpan? TimeToStop => Serving.TimeToStop;

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop) => Serving.RunAsync(
        Surroundings, arguments.GetRequiredValue(_data), arguments.GetValue(_port), arguments.GetValue(_model), stop);
}
