#pragma once

#include <QWidget>
#include <map>

#include "indexer/looks/consent_form.h"
#include "indexer/looks/consents.h"

class QButtonGroup;
class QGridLayout;
class QVBoxLayout;

namespace quarterturn {

class GiverFields;
class Notice;
class OptionalDay;
class Session;
class SignaturePad;

// The consent form on the screen: the same words as on paper, her answers, and her signature, kept
// as a picture with the wording that she saw.
class SignPage : public QWidget {
    Q_OBJECT
  public:
    explicit SignPage(Session& session, QWidget* parent = nullptr);

    void show_client(const Client& client);  // throws DiskError

  signals:
    void done();  // signed or left

  private:
    void add_block(const FormBlock& block);
    QWidget* make_uses();
    void add_use(QGridLayout& grid, int row, Use use);
    QWidget* make_sign_part();
    FormFacts facts() const;
    ConsentEntry entry(ConsentSaid said) const;
    std::vector<SaidOfUses> answers() const;
    void save();

    Session& session_;
    Client client_;
    std::vector<FormBlock> blocks_;
    QVBoxLayout* column_;
    std::map<Use, QButtonGroup*> uses_;
    OptionalDay* until_ = nullptr;
    GiverFields* giver_ = nullptr;
    SignaturePad* pad_ = nullptr;
    Notice* notice_ = nullptr;
};

}  // namespace quarterturn
