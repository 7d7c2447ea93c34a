#include "ui/wedding_morning/board_edits.h"

#include <QCoreApplication>

#include "indexer/store/done_table.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString board_edit(const char* text) {
    return QCoreApplication::translate("board_edits", text);
}

void set_step(Library& library, WeddingId wedding, LookId look, const StepTick& step, bool done) {
    if (done) {
        library.boards().tick(wedding, look, step);
    } else {
        library.boards().untick(wedding, look, step.number);
    }
}

void set_client(Library& library, WeddingId wedding, ClientId client, bool done) {
    DoneTable table(library.database());
    done ? table.set(wedding, client) : table.clear(wedding, client);
}

}  // namespace

Edit change_step(WeddingId wedding, LookId look, const StepTick& step, bool done) {
    const QString said =
        done ? board_edit(QT_TRANSLATE_NOOP("board_edits", "ticked step %1"))
             : board_edit(QT_TRANSLATE_NOOP("board_edits", "took the tick off step %1"));
    return {to_utf8(said.arg(step.number + 1)),
            [=](Library& library) { set_step(library, wedding, look, step, done); }};
}

Edit change_client(WeddingId wedding, const Client& client, bool done) {
    const QString said =
        done ? board_edit(QT_TRANSLATE_NOOP("board_edits", "said that %1 is done"))
             : board_edit(QT_TRANSLATE_NOOP("board_edits", "said that %1 is not done after all"));
    return {to_utf8(said.arg(from_utf8(client.name))),
            [=, id = client.id](Library& library) { set_client(library, wedding, id, done); }};
}

Edit start_timer(const Timer& timer) {
    const QString said = board_edit(QT_TRANSLATE_NOOP("board_edits", "started the timer %1"));
    return {to_utf8(said.arg(from_utf8(timer.name))),
            [timer](Library& library) { library.boards().start(timer); }};
}

Edit stop_timer(const Timer& timer) {
    const QString said = board_edit(QT_TRANSLATE_NOOP("board_edits", "put the timer %1 away"));
    return {to_utf8(said.arg(from_utf8(timer.name))),
            [timer](Library& library) { library.boards().stop(timer.id); }};
}

}  // namespace quarterturn
