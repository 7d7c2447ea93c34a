#include "ui/widgets/said_here.h"

#include <QCoreApplication>
#include <array>
#include <ranges>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

struct DoneHere {
    QLatin1String command;
    const char* place;
};

constexpr std::array done_here{
    DoneHere{QLatin1String("qturn verify without --look-only"),
             QT_TRANSLATE_NOOP("words", "“Check everything” in Keeping it safe")},
    DoneHere{QLatin1String("qturn verify"),
             QT_TRANSLATE_NOOP("words", "“Check everything” in Keeping it safe")},
    DoneHere{QLatin1String("qturn restore"),
             QT_TRANSLATE_NOOP("words", "“A library again from a backup” in Keeping it safe")},
    DoneHere{QLatin1String("qturn lock remove"),
             QT_TRANSLATE_NOOP("words", "“Unlock for good” in the settings")},
    DoneHere{QLatin1String("qturn client erasures"),
             QT_TRANSLATE_NOOP("words", "“What was erased” in the settings")},
};

}  // namespace

QString said_here(std::string_view sentence) {
    QString said = from_utf8(sentence);
    for (const auto& [command, place] : done_here) {
        said.replace(command, QCoreApplication::translate("words", place));
    }
    return said;
}

QString said_with(const QString& sentence, const std::vector<std::string>& left) {
    QStringList lines;
    if (!sentence.isEmpty()) lines << sentence;
    for (const std::string& each : left | std::views::take(most_lines_below)) {
        lines << said_here(each);
    }
    if (left.size() > most_lines_below) {
        lines << QCoreApplication::translate("words", "And %n more like these.", nullptr,
                                             static_cast<int>(left.size() - most_lines_below));
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace quarterturn
