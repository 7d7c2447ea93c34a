#include "ui/shell/standing_notice.h"

#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

StandingNotice::StandingNotice(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), notice_(new Notice(this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space(8), space(1), space(8), 0);
    row->addWidget(notice_);
    hide();
}

void StandingNotice::refresh(bool alone) {
    const QString words = alone ? QString() : session_.standing_words();
    setVisible(!words.isEmpty());
    notice_->say(words);
}

}  // namespace quarterturn
