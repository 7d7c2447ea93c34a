#include "ui/widgets/said_here.h"

#include <QCoreApplication>
#include <array>

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

}  // namespace quarterturn
