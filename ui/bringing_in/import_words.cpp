#include "ui/bringing_in/import_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "indexer/disk/lines_by_reason.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr qsizetype most_names = 6;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(import_words)
};

QString photos(std::size_t count) {
    return Words::tr("%n photo(s)", nullptr, static_cast<int>(count));
}

QString files(std::size_t count) {
    return Words::tr("%n file(s)", nullptr, static_cast<int>(count));
}

//: what a count is of, and the count
QString counted(const QString& what, std::size_t count) {
    return Words::tr("%1: %2").arg(what, photos(count));
}

QString moments_shown(LocalTime first, LocalTime last) {
    if (date_of(first) == date_of(last)) {
        //: a day, and times of the clock
        return Words::tr("%1, %2").arg(shown(date_of(first)), hours_shown(first, last));
    }
    return Words::tr("%1, %2, to %3, %4")
        .arg(shown(date_of(first)), clock_shown(first), shown(date_of(last)), clock_shown(last));
}

QStringList devices_shown(const ImportPreview& preview) {
    QStringList lines;
    for (const PhotosOfDevice& device : preview.devices) {
        lines << counted(shown(device.device), static_cast<std::size_t>(device.photos));
    }
    return lines;
}

QStringList sittings_shown(Library& library, const std::vector<PhotosOfSitting>& sittings) {
    QStringList lines;
    for (const PhotosOfSitting& sitting : sittings) {
        lines << counted(sitting_shown(library, sitting.sitting),
                         static_cast<std::size_t>(sitting.photos));
    }
    return lines;
}

QString names_shown(const std::vector<Path>& paths) {
    QStringList names;
    for (const Path& path : paths) {
        if (names.size() == most_names) {
            names << QStringLiteral("…");
            break;
        }
        names << from_utf8(path.filename().native());
    }
    return names.join(QStringLiteral(", "));
}

void add(std::vector<ImportFact>& facts, const QString& about, const QStringList& lines) {
    if (!lines.isEmpty()) facts.push_back({about, lines});
}

void add_left_out(std::vector<ImportFact>& facts, const std::vector<Path>& already_here,
                  std::size_t in_bin, const std::vector<Path>& left_alone) {
    if (!already_here.empty()) {
        QStringList lines{Words::tr("%1, not copied again").arg(photos(already_here.size()))};
        if (in_bin > 0) {
            lines << Words::tr("In the bin, and left there: %1 of these").arg(photos(in_bin));
        }
        add(facts, Words::tr("Already here"), lines);
    }
    if (!left_alone.empty()) {
        add(facts, Words::tr("Left alone"),
            {Words::tr("%1: %2").arg(files(left_alone.size()), names_shown(left_alone))});
    }
}

// Of a few files each by its name; of many, each reason once.
QStringList few_lines(const std::vector<RefusedFile>& refused) {
    constexpr std::size_t few = 20;
    QStringList lines;
    if (refused.size() > few) {
        for (const std::string& line : sentences_by_reason(refused)) lines << from_utf8(line);
        return lines;
    }
    for (const RefusedFile& file : refused) {
        lines << Words::tr("%1: %2").arg(from_utf8(file.file.filename().native()),
                                         from_utf8(file.reason));
    }
    return lines;
}

void add_refused(std::vector<ImportFact>& facts, const std::vector<RefusedFile>& refused) {
    add(facts, Words::tr("Cannot be taken"), few_lines(refused));
}

void add_not_moved(std::vector<ImportFact>& facts, const std::vector<RefusedFile>& files) {
    add(facts, Words::tr("Not moved to the folder of its sitting"), few_lines(files));
}

void add_put_back(std::vector<ImportFact>& facts, const ImportReport& report) {
    if (report.put_back.empty()) return;
    QStringList lines{Words::tr("%1 whose file in the library was gone or had changed")
                          .arg(photos(report.put_back.size()))};
    if (!report.set_aside.empty()) {
        lines << Words::tr("Kept beside them: %1").arg(names_shown(report.set_aside));
    }
    add(facts, Words::tr("Put back"), lines);
}

}  // namespace

QString sitting_shown(Library& library, const Sitting& sitting) {
    const auto client = library.clients().find(sitting.client);
    QString kind = shown(sitting.kind);
    kind[0] = kind[0].toUpper();
    //: kind of sitting, client, day, hours
    return Words::tr("%1 of %2, %3, %4")
        .arg(kind, client ? isolated(from_utf8(client->name)) : QString(),
             short_shown(date_of(sitting.starts)), hours_shown(sitting.starts, sitting.ends));
}

QString preview_heading(const ImportPreview& preview) {
    if (preview.fresh > 0) {
        return Words::tr("%n photo(s) to bring in", nullptr, preview.fresh);
    }
    if (!preview.already_here.empty()) return Words::tr("All photos of these are here already");
    return Words::tr("There is no photo here");
}

std::vector<ImportFact> preview_facts(Library& library, const ImportPreview& preview) {
    std::vector<ImportFact> facts;
    if (preview.first) {
        add(facts, Words::tr("Taken"), {moments_shown(*preview.first, *preview.last)});
    }
    add(facts, Words::tr("With"), devices_shown(preview));
    QStringList belong = sittings_shown(library, preview.sittings);
    const auto add_waiting = [&](const QString& what, int count) {
        if (count > 0) belong << counted(what, static_cast<std::size_t>(count));
    };
    add_waiting(Words::tr("Taken when there was no sitting"), preview.in_no_sitting);
    add_waiting(Words::tr("Taken when there was more than one"), preview.in_several);
    add_waiting(Words::tr("Without a time"), preview.undated);
    add(facts, Words::tr("They belong to"), belong);
    if (preview.fresh > 0) {
        add(facts, Words::tr("To be copied"),
            {Words::tr("%1; the originals stay as they are")
                 .arg(QLocale().formattedDataSize(preview.bytes, 0, QLocale::DataSizeSIFormat)),
             Words::tr("Whether a photo opens is seen when it is brought in.")});
    }
    add_left_out(facts, preview.already_here, static_cast<std::size_t>(preview.in_bin),
                 preview.left_alone);
    add_refused(facts, preview.refused);
    return facts;
}

QString report_heading(const ImportReport& report) {
    const int count = static_cast<int>(report.imported.size());
    if (report.stopped) {
        return Words::tr("Stopped: %n photo(s) brought in and kept", nullptr, count);
    }
    if (count > 0) return Words::tr("%n photo(s) brought in", nullptr, count);
    return Words::tr("Nothing new was brought in");
}

std::vector<ImportFact> report_facts(Library& library, const ImportOutcome& outcome) {
    const ImportReport& report = outcome.report;
    std::vector<ImportFact> facts;
    QStringList placed = sittings_shown(library, outcome.sittings);
    std::size_t waiting = report.imported.size();
    for (const PhotosOfSitting& sitting : outcome.sittings) {
        waiting -= static_cast<std::size_t>(sitting.photos);
    }
    if (waiting > 0) placed << counted(Words::tr("For you to place, below"), waiting);
    add(facts, Words::tr("They belong to"), placed);
    QStringList brought;
    for (const std::string& name : library.inspirations().names_among(report.imported)) {
        brought << from_utf8(name);
    }
    add(facts, Words::tr("Somebody else's work, as a client brought it, and never passed on"),
        brought);
    add_put_back(facts, report);
    add_left_out(facts, report.already_here, report.in_bin.size(), report.left_alone);
    add_refused(facts, report.refused);
    add_not_moved(facts, report.not_moved);
    if (report.stopped) {
        add(facts, Words::tr("To go on"), {Words::tr("Choose the same folder or card again.")});
    }
    return facts;
}

}  // namespace quarterturn
