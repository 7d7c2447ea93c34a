#include "ui/sign_off/files_part.h"

#include <QPointer>
#include <QVBoxLayout>

#include "indexer/looks/sign_off.h"
#include "ui/shell/session.h"
#include "ui/sign_off/sentences.h"
#include "ui/widgets/notice.h"

namespace quarterturn {

FilesPart::FilesPart(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), notice_(new Notice) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(notice_);
}

void FilesPart::look_at(std::optional<LookId> look) {
    look_ = look;
    notice_->say({});
    if (!look) return;
    session_.start<Sentences>(
        [look](Library& library, Job&) {
            return file_problems(library, look_state(library, *look));
        },
        [part = QPointer(this), look](const Sentences& problems) {
            if (!part || part->look_ != look) return;
            part->notice_->say(in_lines(problems));
        });
}

}  // namespace quarterturn
