#include "ui/round_the_head/missing_part.h"

#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString sentence_of(const CoverageLine& line) {
    QString text = from_utf8(gap_text(line));
    text[0] = text[0].toUpper();
    return text + QLatin1Char('.');
}

}  // namespace

MissingPart::MissingPart(QWidget* parent) : QWidget(parent), flow_(new FlowLayout(space(2), this)) {
    flow_->setContentsMargins(0, 0, 0, 0);
}

void MissingPart::show_gaps(const CoverageReport& coverage, Stage stage, std::size_t most_told) {
    if (coverage == shown_ && stage == stage_ && most_told == most_told_) return;
    most_told_ = most_told;
    shown_ = coverage;
    stage_ = stage;
    empty_layout(flow_);
    std::vector<CoverageLine> gaps;
    std::ranges::copy_if(coverage.lines, std::back_inserter(gaps), open_gap);
    std::ranges::stable_partition(
        gaps, [&](const CoverageLine& line) { return line.wanted.shot.stage == stage; });
    for (std::size_t i = 0; i < std::min(gaps.size(), most_told); ++i) add_gap(gaps[i]);
    if (gaps.size() > most_told) {
        const int others = static_cast<int>(gaps.size() - most_told);
        auto* more = new SentenceLink(tr("And %n more: see the whole list.", nullptr, others));
        connect(more, &SentenceLink::clicked, this, &MissingPart::sign_off_asked);
        flow_->addWidget(more);
    }
    if (!gaps.empty()) return;
    auto* done = new SentenceLink(tr("Every required shot is there: on to sign-off."));
    connect(done, &SentenceLink::clicked, this, &MissingPart::sign_off_asked);
    flow_->addWidget(done);
}

void MissingPart::add_gap(const CoverageLine& line) {
    auto* link = new SentenceLink(sentence_of(line));
    connect(link, &SentenceLink::clicked, this,
            [this, shot = line.wanted.shot] { emit asked_for(shot); });
    flow_->addWidget(link);
}

}  // namespace quarterturn
