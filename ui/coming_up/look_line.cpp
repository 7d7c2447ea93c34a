#include "ui/coming_up/look_line.h"

#include "ui/coming_up/next_steps.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/coverage_ring.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_lacks_told = 2;

QString look_title(const Look& look) {
    const QString worn = shown(look.worn);
    if (look.name.empty()) return LookLine::tr("%1 look").arg(worn);
    //: the look's name and when it is worn
    return LookLine::tr("%1 (%2)").arg(from_utf8(look.name), worn);
}

QString state_sentence(const LookStanding& standing) {
    if (standing.signed_at) {
        return LookLine::tr("Signed off on %1.").arg(shown(date_of(*standing.signed_at)));
    }
    if (standing.lacks.empty()) return LookLine::tr("Nothing is missing: ready to sign off.");
    return {};
}

}  // namespace

LookLine::LookLine(Session& session, const LookAhead& look, QWidget* parent)
    : QWidget(parent), session_(session) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(3));
    auto* ring = new CoverageRing(space(12));
    if (look.standing) ring->show_ring(look.standing->ring);
    row->addWidget(ring, 0, Qt::AlignTop);
    QVBoxLayout* column = make_column(0);
    column->addWidget(make_text(look_title(look.look)));
    if (look.standing) add_lacks(*column, look);
    column->addStretch();
    row->addLayout(column, 1);
}

void LookLine::add_lacks(QVBoxLayout& column, const LookAhead& look) {
    const LookStanding& standing = *look.standing;
    const QString state = state_sentence(standing);
    if (!state.isEmpty()) column.addWidget(make_quiet(state));
    const std::size_t told = std::min(standing.lacks.size(), most_lacks_told);
    for (std::size_t i = 0; i < told; ++i) {
        const Lack& lack = standing.lacks[i];
        auto* link = new SentenceLink(from_utf8(lack.sentence));
        connect(link, &SentenceLink::clicked, this,
                [this, place = step_place(lack.mended_by, look.look, lack.shot)] {
                    session_.go_to(place);
                });
        column.addWidget(link);
    }
    if (told < standing.lacks.size()) {
        const int others = static_cast<int>(standing.lacks.size() - told);
        auto* rest = new SentenceLink(tr("And %n more: see the whole list.", nullptr, others));
        connect(rest, &SentenceLink::clicked, this, [this, id = look.look.id] {
            session_.go_to({.moment = Moment::sign_off, .look = id});
        });
        column.addWidget(rest);
    }
}

}  // namespace quarterturn
