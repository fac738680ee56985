namespace InspectLog.Journal.Sealing;

/// <summary>The script in an archive that checks it without this program.</summary>
internal static class CheckScript
{
    /// <summary>The script: POSIX shell and its utilities, sha256sum and openssl.</summary>
    public const string Text =
        """
        #!/bin/sh
        # Checks this archive with sha256sum and openssl alone: sh verify.sh
        # Ends with 0 when it is intact, 1 when it is not, 2 when that cannot be checked here.
        cd "$(dirname "$0")" || exit 2
        no() { echo "NOT INTACT: $1"; exit 1; }
        for tool in sha256sum openssl; do
            command -v "$tool" >/dev/null || { echo "This computer has no $tool."; exit 2; }
        done

        field() { sed -n "s/.*$1\([0-9a-f]*\).*/\1/p" seal/payload.json; }
        sealed=no
        if ls seal/*.* >/dev/null 2>&1; then
            sealed=yes
            openssl dgst -sha256 -verify seal/key.pem -signature seal/signature.der seal/signed.txt >/dev/null 2>&1 ||
                no "the signature is not that of seal/key.pem."
            payload=$(openssl base64 -A -in seal/payload.json | tr '+/' '-_' | tr -d '=')
            [ "$(cut -d . -f 2- seal/signed.txt)" = "$payload" ] || no "seal/payload.json is not what was signed."
            [ "$(sha256sum <manifest-sha256.txt | cut -c 1-64)" = "$(field '"manifest":"')" ] ||
                no "manifest-sha256.txt is not the one that was sealed."
        fi

        result=$(sha256sum -c manifest-sha256.txt 2>&1) ||
            { echo "$result" | grep -v ': OK$'; no "a file is missing or was changed."; }
        [ "$(find data ! -type d | wc -l)" -eq "$(wc -l <manifest-sha256.txt)" ] ||
            no "the folder data has files that the manifest does not name."

        if [ "$sealed" = no ]; then
            echo "Every file is as the manifest says, and NOT SEALED: whoever made the archive anew could make it so."
            echo "Last entry: $(tail -n 1 data/journal.jsonl | sed -n 's/.*"hash":"\([0-9a-f]*\)".*/\1/p')"
            echo "Compare it with a printed report, or with what you were sent."
            exit 0
        fi

        count=$(sed -n 's/^{"count":\([0-9]*\),.*/\1/p' seal/payload.json)
        last=$(tail -n 1 data/journal.jsonl | sed -n 's/.*"hash":"\([0-9a-f]*\)".*/\1/p')
        [ "$(wc -l <data/journal.jsonl)" -eq "$count" ] || no "the journal has not the $count entries that were sealed."
        [ "$last" = "$(field '"head":"')" ] || no "the last entry is not the one that was sealed."

        echo "Intact: $count entries, and every file as it was sealed."
        echo "Record: $(field '"record":"')"
        echo "Key: $(openssl pkey -pubin -in seal/key.pem -outform DER | sha256sum | cut -c 1-32 | sed 's/..../& /g')"
        echo "Anybody can make a key: compare it, and the record, with a printed report."

        """;
}
