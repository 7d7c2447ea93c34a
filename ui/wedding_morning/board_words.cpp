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

QStringList lines_of(const std::vector<std::string>& sentences) {
    QStringList lines;
    for (const std::string& sentence : sentences) lines << from_utf8(sentence);
    return lines;
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

QString done_in_words(const BoardClient& client) {
    if (client.is_done()) return board_word(QT_TRANSLATE_NOOP("board", "all done"));
    if (client.steps() == 0) return board_word(QT_TRANSLATE_NOOP("board", "not done yet"));
    return board_word(QT_TRANSLATE_NOOP("board", "%1 of %2 done"))
        .arg(client.steps_done())
        .arg(client.steps());
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
