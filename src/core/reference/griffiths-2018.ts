import type { Source } from "../shared/source";

/** 4,145 of 14,700 cows lame: 28.2 % pooled, while the mean of the 61 herds' shares is 31.6 %. */
export const griffiths2018: Source = {
  name: "Griffiths et al. 2018",
  citation:
    "Griffiths BE, Grove White D, Oikonomou G 2018. A cross-sectional study into the prevalence of dairy cattle lameness and associated herd-level risk factors in England and Wales. Front Vet Sci 5:65.",
  standing: "read",
};
