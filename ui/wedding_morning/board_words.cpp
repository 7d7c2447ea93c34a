#include "ui/wedding_morning/board_words.h"

#include <QCoreApplication>

#include "indexer/looks/board_words.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString board_word(const char* text) {
    return QCoreApplication::translate("board", text);
}

}  // namespace

StepsDone steps_done(const BoardClient& client) {
    if (client.looks.empty()) return {};
    const auto& steps = client.looks.front().steps;
    return {static_cast<int>(std::ranges::count(steps, true, &BoardStep::done)),
            static_cast<int>(steps.size())};
}

QString name_of(const BoardClient& client) {
    return from_utf8(client.client.name);
}

QString role_and_time(const BoardClient& client) {
    QStringList words;
    if (!client.role.empty()) words << from_utf8(client.role);
    words << from_utf8(ready_text(client));
    return words.join(QStringLiteral(" · "));
}

QString done_in_words(const StepsDone& done) {
    if (done.steps == 0) return board_word(QT_TRANSLATE_NOOP("board", "no steps"));
    if (done.done == done.steps) return board_word(QT_TRANSLATE_NOOP("board", "all done"));
    return board_word(QT_TRANSLATE_NOOP("board", "%1 of %2 done")).arg(done.done).arg(done.steps);
}

QString look_in_words(const BoardLook& look) {
    QString worn = shown(look.state.look.worn);
    worn.front() = worn.front().toUpper();
    const std::string& name = look.state.look.name;
    if (name.empty()) return board_word(QT_TRANSLATE_NOOP("board", "%1 look")).arg(worn);
    //: when a look is worn and what it is called
    return board_word(QT_TRANSLATE_NOOP("board", "%1: %2")).arg(worn, from_utf8(name));
}

}  // namespace quarterturn
