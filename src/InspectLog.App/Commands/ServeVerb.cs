using System.CommandLine;

namespace InspectLog.App.Commands;

/// <summary>Starts the web app on a data folder.</summary>
internal sealed class ServeVerb : Verb
{
    private readonly Option<string> _data = DataFolderOption.Of("Folder of the journals, recordings and photos; made when missing.");
    private readonly Option<int> _port = ListeningPort.Option();
    private readonly NetworkChoice _network = new();
    private readonly Option<bool> _readOnly = new("--read-only")
    {
        Description = "Only look: nothing in the folder is written, and it may be on a medium that cannot be. For this computer alone.",
    };
    private readonly Option<string?> _model = SpeechModelChoice.Option();
    private readonly Option<bool> _speechWhenNeeded = SpeechModelChoice.WhenNeededOption();
    private readonly Option<bool> _open = OwnBrowser.Option();

    public ServeVerb(Surroundings surroundings)
        : base("serve", "Start the app on this computer and print its address. Ctrl+C stops it.", surroundings)
    {
        Add(_data);
        Add(_port);
        _network.AddTo(this);
        Add(_model);
        Add(_speechWhenNeeded);
        Add(_open);
        Add(_readOnly);
        Validators.Add(given =>
        {
            if (given.GetValue(_readOnly) && _network.IsAsked(given))
                given.AddError("--read-only shows the folder on this computer alone: leave out what opens it to the network.");
        });
    }

    public override IReadOnlyList<string> Examples =>
    [
        "inspectlog serve",
        "inspectlog serve --lan",
        "inspectlog serve --data /srv/garage --port 8080",
        "inspectlog serve --data /media/backup/garage --read-only",
    ];

    public override TimeSpan? TimeToStop => Serving.TimeToStop;

    protected override Task<int> RunAsync(ParseResult arguments, CancellationToken stop) => Serving.RunAsync(
        Surroundings,
        arguments.GetRequiredValue(_data),
        arguments.GetValue(_port),
        new SpeechStart(arguments.GetValue(_model), arguments.GetValue(_speechWhenNeeded)),
        _network.Of(arguments),
        arguments.GetValue(_open),
        stop,
        arguments.GetValue(_readOnly));
}
