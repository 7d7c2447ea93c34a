#pragma once

#include "ui/portfolio_screen/shown_candidates.h"
#include "ui/shell/screen.h"

class QLayout;
class QButtonGroup;
class QComboBox;
class QLabel;
class QStackedWidget;

namespace quarterturn {

class BalanceBars;
class CandidateShelves;
class ExportPart;
class HairOnlyPage;
class LedgerPart;
class PhotoPart;
class SelectionPart;
class Session;

// What she could show for a use, chosen into a selection and put in order; the selection on its way
// out; and what went out.
class PortfolioScreen : public Screen {
    Q_OBJECT
  public:
    enum class Part { choosing, sending, ledger };
    Q_ENUM(Part)

    explicit PortfolioScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    void show_part(Part part);

  private:
    QLayout* build_head();
    void add_part(QLayout& row, Part part, const QString& name);
    QWidget* build_choosing();
    QWidget* build_side();
    void show_tasks();
    void open_hair_only();
    void look_for_candidates();
    void show_found(Use use, std::vector<Candidate> all);
    void look_at(std::optional<PhotoId> photo);
    void show_chosen();
    Use use() const;
    void use_changed();

    Session& session_;
    ShownCandidates candidates_;
    std::optional<PhotoId> photo_;  // that is looked at
    bool looking_ = false;          // for candidates, on a thread
    bool look_again_ = false;       // when that has ended
    bool just_found_ = false;       // the change that comes is the end of the looking
    QButtonGroup* parts_;
    QComboBox* uses_;
    QLabel* looking_words_;
    QStackedWidget* body_;
    QStackedWidget* found_;
    QWidget* nothing_;
    CandidateShelves* shelves_;
    PhotoPart* about_;
    QLabel* counted_;
    BalanceBars* families_;
    BalanceBars* textures_;
    BalanceBars* colours_;
    SelectionPart* selection_;
    ExportPart* export_;
    LedgerPart* ledger_;
    HairOnlyPage* hair_only_;
};

}  // namespace quarterturn
